package piecewright.ensemble;

import java.util.List;
import java.util.Optional;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.CouchRules;
import piecewright.plan.Finding;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Search;
import piecewright.process.PieceState;
import piecewright.style.HotCouchSchedule;

/**
 * Follows a hot couch by its thermometer: looks as often as the style asks, turns a pile that is too hot, and breaks it
 * at the moment in somebody's hours at which its index, as the readings foretell it, is nearest to what the plan wants,
 * with the kiln loaded soon after.
 */
final class CouchFollower {
    /** Judgement: nobody asks for another moment nearer than half an hour. */
    private static final int AGAIN_MINUTES = 30;
    /** Judgement: a probe half a kelvin off the pile's mean makes the index so wrong; ln. */
    private static final double PROBE_SD = 0.04;
    /** Judgement: a pile that is spread and turned loses one to three kelvin. */
    private static final double TURNED_K = 2;
    /** Judgement: past its peak and below this a pile makes nothing more worth waiting for. */
    private static final double SPENT_C = 40;

    private final Script script;
    private final UnderWay piece;
    private final HotCouchSchedule schedule;
    private final CouchRules rules;
    private final Line planned;
    private final Line load;
    private final int packedMinute;
    private final double seenRatio;
    private int lookedMinute;
    private int looks;

    CouchFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.schedule = script.blueprint().setup().couching().orElseThrow().schedule();
        this.rules = new CouchRules(schedule);
        this.planned = script.first(ActKind.BREAK);
        this.load = script.first(ActKind.LOAD);
        this.packedMinute = piece.minute();
        this.lookedMinute = packedMinute;
        this.seenRatio = Math.exp(PROBE_SD * piece.luck().nextGaussian());
    }

    /** From packing until the kiln is loaded. */
    void follow() {
        int at = packedMinute;
        int look = nextLook();
        do {
            int next = Math.min(nextMoment(at), look);
            if (next >= Moments.NEVER) break;
            at = next;
            piece.walkTo(at);
            if (at == look && !breaksAt(at)) {
                look(at);
                look = nextLook();
            }
        } while (!breaksAt(at));
        breakUp(at);
        load(at);
    }

    /** The next moment the couch could be broken and the kiln loaded; the planned one is among them. */
    private int nextMoment(int lastMinute) {
        int next = lastMinute;
        do {
            next = script.moments().next(next + AGAIN_MINUTES, planned.workMinutes());
        } while (next < Moments.NEVER && !isLoadable(next));
        return planned.minute() > lastMinute ? Math.min(planned.minute(), next) : next;
    }

    private boolean isLoadable(int atMinute) {
        return loading(atMinute) - atMinute <= 60 * CouchRules.loadSlip().softHours();
    }

    private int loading(int brokenMinute) {
        if (brokenMinute == planned.minute()) return load.minute();
        return script.moments().next(brokenMinute + planned.workMinutes(), load.workMinutes());
    }

    /** The next planned look where the couch was packed as planned, else the last moment before it is overdue. */
    private int nextLook() {
        if (packedMinute == script.first(ActKind.PACK).minute()) {
            Optional<Line> next = checks().stream()
                    .filter(line -> line.minute() > lookedMinute)
                    .findFirst();
            if (next.isPresent()) return next.get().minute();
        }
        Slip slip = rules.checkSlip(
                (lookedMinute - packedMinute) / 60.0 + schedule.checks().lowHours());
        int due = lookedMinute + (int) (60 * slip.softHours());
        int last = script.moments().last(lookedMinute + AGAIN_MINUTES, due, Search.CHECK_MINUTES);
        return last < Moments.NEVER ? last : script.moments().next(due, Search.CHECK_MINUTES);
    }

    private List<Line> checks() {
        return script.of(ActKind.CHECK);
    }

    private void look(int at) {
        String id = looks < checks().size() ? checks().get(looks).id() : "couch.check-at-" + at;
        Visit visit = new Visit(id, ActKind.CHECK, 0, script.instant(at));
        looks++;
        Slip slip = rules.checkSlip((at - packedMinute) / 60.0);
        piece.checkLate(visit.id(), piece.hours(), slip.softHours(), slip.hardHours());
        if (!rules.coolEnough(piece.now().grainC())) {
            piece.breach(visit.id(), Fault.TOO_WARM, Severity.SOFT);
            piece.cool(TURNED_K);
        }
        piece.meet(visit);
        lookedMinute = at;
    }

    /** Whether this is the moment: the index there, nearer than it will be at the next one, or no use waiting. */
    private boolean breaksAt(int at) {
        boolean anybody =
                at == planned.minute() || script.moments().next(at, planned.workMinutes()) == at && isLoadable(at);
        if (!anybody) return false;
        double wanted = aimHours();
        double now = seenHours(piece.now());
        if (now >= wanted) return true;
        int next = nextMoment(at);
        boolean spent = piece.pile().caught().happened() && piece.now().grainC() < SPENT_C;
        if (spent || next > packedMinute + 60 * schedule.longestHours()) return true;
        double then = seenHours(piece.ahead(next));
        boolean beyond = then > schedule.acceptableIndex().highHours();
        if (beyond && now >= schedule.acceptableIndex().lowHours()) return true;
        return then >= wanted && wanted - now <= then - wanted;
    }

    private double seenHours(PieceState state) {
        return seenRatio * state.couch().indexHours();
    }

    /** The index the plan foretells where it breaks the couch; what the style wants where it foretells none. */
    private double aimHours() {
        return script.blueprint().plan().findings().stream()
                .filter(Finding.CouchForecast.class::isInstance)
                .mapToDouble(finding -> ((Finding.CouchForecast) finding).indexHours())
                .findFirst()
                .orElse(schedule.indexHours());
    }

    private void breakUp(int at) {
        double indexHours = piece.now().couch().indexHours();
        boolean cold = !piece.pile().caught().happened();
        if (indexHours < schedule.acceptableIndex().lowHours()) {
            piece.breach(planned.id(), Fault.TOO_COLD, cold ? Severity.HARD : Severity.SOFT);
        }
        if (indexHours > schedule.acceptableIndex().highHours()) {
            piece.breach(planned.id(), Fault.LATE, Severity.SOFT);
        }
        piece.meet(new Visit(planned.id(), ActKind.BREAK, 0, script.instant(at)));
    }

    private void load(int brokenMinute) {
        int at = loading(brokenMinute);
        piece.walkTo(at);
        Slip slip = CouchRules.loadSlip();
        piece.checkLate(load.id(), piece.hours(), slip.softHours(), slip.hardHours());
        piece.meet(new Visit(load.id(), ActKind.LOAD, 0, script.instant(at)));
    }
}
