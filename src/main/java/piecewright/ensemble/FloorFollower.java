package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Limits;
import piecewright.plan.Practice;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Search;

/** Follows the floor: turns as planned, and ends growth at the visit that finds the acrospire nearest to its aim. */
final class FloorFollower {
    /** Judgement: a count of 30 corns of a normal lot, with the error that more corns do not lessen. */
    private static final double COUNT_SD = Math.sqrt(0.2 * 0.2 / 30 + 0.1 * 0.1);
    /** Judgement: turning again within 3 h does nothing; nor does counting. */
    private static final int AGAIN_MINUTES = 180;
    /** Judgement: nobody ends growth before half the aim. */
    private static final double TOO_SOON_RATIO = 0.5;
    /** Judgement: nor later than 14 days. */
    private static final int LONGEST_MINUTES = 14 * 24 * 60;
    /** Judgement: growth beyond what the style accepts by more than this is past mending. */
    private static final double HARD_BEYOND_RATIO = 0.1;
    /** Judgement: minutes to spread for the wither or to load, as the plan's. */
    private static final int END_MINUTES = 30;

    private final Script script;
    private final UnderWay piece;
    private final Line end;
    private final int startMinute;
    private final Limits limits;

    FloorFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.end = script.endOfGrowth();
        this.startMinute = piece.minute();
        this.limits =
                Practice.turning(script.blueprint().setup().outfit().growing().depthCm());
    }

    void follow() {
        List<Line> turns = new ArrayList<>(script.of(ActKind.TURN).stream()
                .filter(line -> line.minute() > startMinute + 60 && line.minute() < end.minute())
                .toList());
        int at = following(turns, startMinute);
        int next = following(turns, at);
        piece.walkTo(at);
        while (!ends(at, next)) {
            turn(turns, at);
            at = next;
            next = following(turns, at);
            piece.walkTo(at);
        }
        checkGap(end.id());
        if (end.visit().kind() == ActKind.WITHER) {
            piece.meet(new Visit(end.id(), ActKind.WITHER, 0, script.instant(at)));
            wither(at);
        }
        load();
    }

    /** The next visit: the next planned one, one between where the bed may not lie so long, or the next anybody can. */
    private int following(List<Line> turns, int at) {
        if (at >= end.minute()) return script.moments().next(at + AGAIN_MINUTES, END_MINUTES);
        int planned = turns.stream()
                .mapToInt(Line::minute)
                .filter(minute -> minute > at)
                .findFirst()
                .orElse(end.minute());
        double grainC = piece.now().grainC();
        if (planned <= at + (int) (60 * limits.hardHours(grainC))) return planned;
        int longest = at + (int) (60 * limits.softHours(grainC));
        int between = script.moments().last(at + AGAIN_MINUTES, longest, Search.TURN_MINUTES);
        return Math.min(planned, between);
    }

    /** Whether the acrospire is nearer to its aim now than it will be at the next visit, by its pace so far. */
    private boolean ends(int at, int next) {
        if (at - startMinute > LONGEST_MINUTES || next == Moments.NEVER) return true;
        if (at != end.minute() && script.moments().next(at, END_MINUTES) != at) return false;
        double aim = end.growthRatio();
        double counted = piece.counted(COUNT_SD);
        if (!piece.chitted().happened() || counted < TOO_SOON_RATIO * aim) return false;
        double pacePerMinute = counted / Math.max(60, at - piece.chitted().atMinutes());
        double then = counted + pacePerMinute * (next - at);
        return Math.abs(counted - aim) <= Math.abs(then - aim);
    }

    private void turn(List<Line> turns, int at) {
        for (Line turn : turns) {
            if (turn.minute() != at) continue;
            checkGap(turn.id());
            piece.meet(turn.visit());
            return;
        }
        piece.meet(new Visit("floor.turn-at-" + at, ActKind.TURN, 0, script.instant(at)));
    }

    private void checkGap(String id) {
        piece.checkLate(id, piece.hours(), limits.softHours(piece.meanC()), limits.hardHours(piece.meanC()));
    }

    private void wither(int from) {
        Line load = script.offTheFloor();
        int lasting = load.minute() - end.minute();
        for (Line turn : script.of(ActKind.TURN)) {
            int at = from + turn.minute() - end.minute();
            if (turn.minute() < end.minute() || at != script.moments().next(at, turn.workMinutes())) continue;
            piece.walkTo(at);
            piece.meet(new Visit(turn.id(), ActKind.TURN, 0, script.instant(at)));
        }
        int at = from == end.minute() ? load.minute() : script.moments().next(from + lasting, END_MINUTES);
        piece.walkTo(Math.max(piece.minute(), at));
        Slip slip = script.rules().witherSlip(piece.meanC());
        piece.checkLate(load.id(), (at - from) / 60.0, slip.softHours(), slip.hardHours());
    }

    private void load() {
        Line load = script.offTheFloor();
        double grown = piece.now().growth().growthRatio();
        double low = script.style().growth().acceptable().lowFraction();
        double high = script.style().growth().acceptable().highFraction();
        if (grown < low) piece.breach(load.id(), Fault.UNDERGROWN, severity(low - grown));
        if (grown > high) piece.breach(load.id(), Fault.OVERGROWN, severity(grown - high));
        piece.meet(new Visit(load.id(), load.visit().kind(), 0, script.instant(piece.minute())));
    }

    private static Severity severity(double beyond) {
        return beyond > HARD_BEYOND_RATIO ? Severity.HARD : Severity.SOFT;
    }
}
