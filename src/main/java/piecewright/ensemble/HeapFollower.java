package piecewright.ensemble;

import java.util.List;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.HeapRules;
import piecewright.plan.Heaping;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;

/** Follows a wet couch: looks as planned, spreads when enough corns have chitted, or at once when a look finds it warm. */
final class HeapFollower {
    /** Judgement: somebody at home looks again after as long. */
    private static final int LOOK_MINUTES = 30;
    /** Judgement: minutes to heap or to spread, as the plan's. */
    private static final int WORK_MINUTES = 15;

    private final Script script;
    private final UnderWay piece;
    private final Heaping heaping;
    private final HeapRules rules;

    HeapFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.heaping = script.blueprint().setup().heaping().orElseThrow();
        this.rules = HeapRules.of(script.blueprint().setup());
    }

    /** Until it is spread; false when the corns had chitted before they could be heaped. */
    boolean follow(Line heap, int drainedMinute) {
        int soonest = drainedMinute + (int) (60 * Rules.LAST_REST_SHORTEST_HOURS);
        int at = heap.minute() >= soonest ? heap.minute() : script.moments().next(soonest, WORK_MINUTES);
        piece.walkTo(at);
        if (piece.ripe().happened()) return false;
        piece.meet(new Visit(heap.id(), ActKind.HEAP, 0, script.instant(at)));
        Line floor = script.first(ActKind.FLOOR);
        int spread = spreadMinute(floor, at);
        piece.checkLate(floor.id(), (spread - at) / 60.0, slip().softHours(), slip().hardHours());
        piece.meet(new Visit(floor.id(), ActKind.FLOOR, 0, script.instant(spread)));
        return true;
    }

    private Slip slip() {
        return rules.liesSlip(piece.now().grainC());
    }

    private int spreadMinute(Line floor, int heapedMinute) {
        List<Line> looks = script.of(ActKind.LOOK);
        int at = heapedMinute;
        while (true) {
            int last = at;
            int next = script.moments().next(last + LOOK_MINUTES, WORK_MINUTES);
            if (floor.minute() > last) {
                next = looks.stream()
                        .mapToInt(Line::minute)
                        .filter(minute -> minute > last)
                        .findFirst()
                        .orElse(floor.minute());
            }
            if (next == Moments.NEVER) return last;
            at = next;
            piece.walkTo(at);
            meet(looks, at);
            boolean warm = !rules.coolEnough(piece.now().grainC());
            boolean due = at >= floor.minute() && piece.ripe().happened();
            if (warm) piece.breach(floor.id(), Fault.TOO_WARM, Severity.SOFT);
            else if (!due && (at - heapedMinute) / 60.0 > slip().hardHours()) {
                piece.breach(floor.id(), Fault.UNDERGROWN, piece.chitted().happened() ? Severity.SOFT : Severity.HARD);
            } else if (!due) continue;
            return at;
        }
    }

    private void meet(List<Line> looks, int minute) {
        for (Line look : looks) if (look.minute() == minute) piece.meet(look.visit());
    }
}
