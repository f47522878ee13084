package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Limits;
import piecewright.plan.Practice;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Search;
import piecewright.process.PieceState;

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
    /** Judgement: somebody at home weighs a drying bed again after as long. */
    private static final int LOOK_MINUTES = 60;
    /** Judgement: nobody comes sooner for a quarter of an hour, */
    private static final int UNNOTICED_MINUTES = 15;
    /** Judgement: between two visits no bed's mean rises by more; saves foreseeing the many gaps that are short. */
    private static final double MOST_RISE_K = 4;
    /** Judgement: or for a third of a kelvin. */
    private static final double UNNOTICED_K = 0.3;

    private final Script script;
    private final UnderWay piece;
    private final Line end;
    private final int startMinute;
    private final int endMinutes;
    private final Limits limits;

    FloorFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.end = script.endOfGrowth();
        this.startMinute = piece.minute();
        this.endMinutes = endMinutes();
        this.limits =
                Practice.turning(script.blueprint().setup().outfit().growing().depthCm());
    }

    void follow() {
        List<Line> turns = script.of(ActKind.TURN).stream()
                .filter(line -> line.minute() > startMinute + 60 && line.minute() < end.minute())
                .toList();
        int at = following(turns, startMinute);
        piece.walkTo(at);
        while (!ends(at, nextEnd(turns, at))) {
            turn(turns, at);
            at = following(turns, at);
            piece.walkTo(at);
        }
        checkGap(end.id());
        if (end.visit().kind() == ActKind.WITHER) {
            piece.meet(new Visit(end.id(), ActKind.WITHER, 0, script.instant(at)));
            if (script.has(ActKind.PACK)) witherToPack(at);
            else wither(at);
        }
        leave();
    }

    /** Minutes that end of growth keeps somebody: a stew in one go, and spreading after it. */
    private int endMinutes() {
        boolean stews = end.visit().kind() == ActKind.STEW;
        return stews ? end.workMinutes() + script.first(ActKind.LOAD).workMinutes() : END_MINUTES;
    }

    /** The next visit: the next planned one, or sooner where the bed is warmer than believed and may not lie so long. */
    private int following(List<Line> turns, int at) {
        int planned = nextVisit(turns, at);
        boolean soon = planned - at <= 60 * limits.softHours(piece.now().grainC() + MOST_RISE_K);
        if (soon || planned == Moments.NEVER) return planned;
        PieceState then = piece.ahead(planned);
        double meanC = (piece.now().grainC() + then.grainC()) / 2;
        boolean beyond = planned - at > 60 * limits.softHours(meanC) + UNNOTICED_MINUTES;
        if (!beyond || !isWarmer(turns, planned, then)) return planned;
        int between = script.moments()
                .last(at + AGAIN_MINUTES, at + (int) (60 * limits.softHours(meanC)), Search.TURN_MINUTES);
        return Math.min(planned, between);
    }

    /** Whether the bed will be warmer at a planned visit than the plan believes; unplanned visits have no belief. */
    private boolean isWarmer(List<Line> turns, int minute, PieceState then) {
        return Stream.concat(turns.stream(), Stream.of(end))
                .filter(line -> line.minute() == minute)
                .allMatch(line -> then.grainC() > line.act().expect().grainC() + UNNOTICED_K);
    }

    private int nextVisit(List<Line> turns, int at) {
        if (at >= end.minute()) return script.moments().next(at + AGAIN_MINUTES, endMinutes);
        return turns.stream()
                .mapToInt(Line::minute)
                .filter(minute -> minute > at)
                .findFirst()
                .orElse(end.minute());
    }

    /** The next visit at which growth could be ended. */
    private int nextEnd(List<Line> turns, int at) {
        int next = at;
        do {
            next = nextVisit(turns, next);
        } while (next < end.minute() && !isFree(next, endMinutes));
        return next;
    }

    /** Whether the acrospire is nearer to its aim now than it will be when growth could be ended next, by its pace so far. */
    private boolean ends(int at, int next) {
        if (at - startMinute > LONGEST_MINUTES || next == Moments.NEVER) return true;
        if (at != end.minute() && !isFree(at, endMinutes)) return false;
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
        for (Line turn : witherTurns(from)) {
            piece.walkTo(from + turn.minute() - end.minute());
            turnWithering(turn);
        }
        int at = from == end.minute() ? load.minute() : script.moments().next(from + lasting, END_MINUTES);
        piece.walkTo(Math.max(piece.minute(), notTooLate(from, at)));
        checkWither(load, from, piece.meanC());
    }

    /** The planned end of a wither, or sooner where it is warmer than believed and may not lie so long. */
    private int notTooLate(int from, int at) {
        double meanC = (piece.now().grainC() + piece.ahead(at).grainC()) / 2;
        int longest = from + (int) (60 * script.rules().witherSlip(meanC).softHours());
        if (at <= longest + UNNOTICED_MINUTES) return at;
        int soonest = Math.max(piece.minute(), from + (int) (60 * Rules.WITHER_SHORTEST_HOURS));
        return Math.min(at, script.moments().last(soonest, longest, END_MINUTES));
    }

    private List<Line> witherTurns(int from) {
        return script.of(ActKind.TURN).stream()
                .filter(turn -> turn.minute() >= end.minute())
                .filter(turn -> isFree(from + turn.minute() - end.minute(), turn.workMinutes()))
                .toList();
    }

    private boolean isFree(int at, int workMinutes) {
        return script.moments().next(at, workMinutes) == at;
    }

    private void turnWithering(Line turn) {
        piece.meet(new Visit(turn.id(), ActKind.TURN, 0, script.instant(piece.minute())));
    }

    private void checkWither(Line next, int from, double meanC) {
        Slip slip = script.rules().witherSlip(meanC);
        piece.checkLate(next.id(), (piece.minute() - from) / 60.0, slip.softHours(), slip.hardHours());
    }

    /**
     * Withers until the malt is as dry as the plan packs it, turned as planned; when that will be the weights at the
     * turnings foretell.
     */
    private void witherToPack(int from) {
        Line pack = script.offTheFloor();
        List<Line> turns = new ArrayList<>(witherTurns(from));
        double hard = script.rules().witherSlip(piece.now().grainC()).hardHours();
        int at = from + (int) (60 * Rules.WITHER_SHORTEST_HOURS) - LOOK_MINUTES;
        do {
            at = nextPacking(at);
            if (at == Moments.NEVER) break;
            while (!turns.isEmpty() && from + turns.get(0).minute() - end.minute() < at) {
                Line turn = turns.remove(0);
                piece.walkTo(from + turn.minute() - end.minute());
                turnWithering(turn);
            }
            piece.walkTo(at);
        } while ((at - from) / 60.0 < hard && !isNearest(pack, nextPacking(at)));
        checkWither(pack, from, piece.meanC());
    }

    /** The next moment the malt could be packed; the planned one is among them. */
    private int nextPacking(int lastMinute) {
        Line pack = script.offTheFloor();
        int next = script.moments().next(lastMinute + LOOK_MINUTES, pack.workMinutes());
        return pack.minute() > lastMinute ? Math.min(pack.minute(), next) : next;
    }

    /** Whether the malt is nearer to its packing moisture now than it will be then, or too dry for the style then. */
    private boolean isNearest(Line pack, int then) {
        if (then == Moments.NEVER) return true;
        double aim = pack.act().expect().moisture().wetBasisFraction();
        double now = piece.weighedFraction(pack.dryKg());
        if (now <= aim) return true;
        double lost = piece.now().mass().moisture().wetBasisFraction()
                - piece.ahead(then).mass().moisture().wetBasisFraction();
        var packing = script.style().couches().hot().orElseThrow().packing();
        boolean tooDry = now - lost < packing.lowFraction() && now <= packing.highFraction();
        return tooDry || now - aim <= aim - (now - lost);
    }

    /** Off the floor: into the couch or on to the kiln; a stew begins by itself. */
    private void leave() {
        Line off = script.offTheFloor();
        double grown = piece.now().growth().growthRatio();
        double low = script.style().growth().acceptable().lowFraction() - Rules.UNTOLD_GROWTH_RATIO;
        double high = script.style().growth().acceptable().highFraction() + Rules.UNTOLD_GROWTH_RATIO;
        if (grown < low) piece.breach(off.id(), Fault.UNDERGROWN, severity(low - grown));
        if (grown > high) piece.breach(off.id(), Fault.OVERGROWN, severity(grown - high));
        if (off.visit().kind() == ActKind.STEW) return;
        if (off.visit().kind() == ActKind.PACK) checkPacking(off);
        piece.meet(new Visit(off.id(), off.visit().kind(), 0, script.instant(piece.minute())));
    }

    private void checkPacking(Line pack) {
        var packing = script.style().couches().hot().orElseThrow().packing();
        double moisture = piece.now().mass().moisture().wetBasisFraction();
        if (moisture > packing.highFraction() + Rules.UNTOLD_MOISTURE_FRACTION) {
            piece.breach(pack.id(), Fault.TOO_WET, Severity.SOFT);
        }
        if (moisture < packing.lowFraction() - Rules.UNTOLD_MOISTURE_FRACTION) {
            piece.breach(pack.id(), Fault.TOO_DRY, Severity.SOFT);
        }
    }

    private static Severity severity(double beyond) {
        return beyond > HARD_BEYOND_RATIO ? Severity.HARD : Severity.SOFT;
    }
}
