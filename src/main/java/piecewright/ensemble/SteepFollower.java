package piecewright.ensemble;

import java.util.List;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Practice;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.steep.SteepModel;
import piecewright.style.SteepSchedule;

/**
 * Follows the steep: the first soaks by the clock, the last as long as the weigh-in before it asks, one more when the
 * last weigh-in says short, one less when an earlier one says enough; on to the floor as soon as the corns have chitted.
 */
final class SteepFollower {
    /** Judgement: a point drier than planned is worth another soak. */
    private static final double SHORT_FRACTION = 0.01;
    /** Judgement: within half a point of the plan's last moisture nobody soaks again. */
    private static final double ENOUGH_FRACTION = 0.005;
    /** Judgement: no more than two soaks beyond the plan. */
    private static final int MOST_EXTRA = 2;
    /** Judgement: a soak is not moved for less than half an hour, and somebody at home looks again after as long. */
    private static final int LOOK_MINUTES = 30;
    /** Judgement: minutes to fill again, to drain and weigh, to spread; as the plan's. */
    private static final int WORK_MINUTES = 15;
    /** Judgement: no lot chits more than so many times as fast as believed; saves foreseeing the early soaks. */
    private static final double MOST_CHIT_RATIO = 2;
    /** Judgement: nobody moves an act for less. */
    private static final int UNNOTICED_MINUTES = 15;

    private final Script script;
    private final UnderWay piece;
    private final SteepSchedule steep;
    private final List<Line> drains;
    private final double aimFraction;
    private int soaks;
    private int drainedMinute;
    private double weighedFraction;
    private double rateRatio = 1;

    SteepFollower(Script script, UnderWay piece) {
        this.script = script;
        this.piece = piece;
        this.steep = script.style().steep();
        this.drains = script.of(ActKind.DRAIN);
        this.aimFraction = lastDrain().act().expect().moisture().wetBasisFraction();
    }

    private Line lastDrain() {
        return drains.get(drains.size() - 1);
    }

    void follow() {
        for (Line line : script.steep()) {
            if (line.visit().kind() == ActKind.SOAK) {
                if (soaks >= steep.fewestImmersions() && isEnough()) break;
                piece.walkTo(soakMinute(line));
                soak(line);
            } else {
                piece.walkTo(drainMinute(line));
                drain(line);
            }
        }
        for (int extra = 0; extra < MOST_EXTRA && isShort(); extra++) {
            if (!soakAgain()) break;
        }
        checkMoisture();
        List<Line> heaps = script.of(ActKind.HEAP);
        if (heaps.isEmpty() || !new HeapFollower(script, piece).follow(heaps.get(0), drainedMinute)) cast();
    }

    /** Whether the grain is as wet as the plan wants it, or nearer to it now than after one more soak. */
    private boolean isEnough() {
        if (weighedFraction >= aimFraction - ENOUGH_FRACTION) return true;
        boolean wouldDo = weighedFraction >= steep.acceptable().lowFraction() + ENOUGH_FRACTION;
        return wouldDo && aimFraction - weighedFraction <= soakedAgain() - aimFraction;
    }

    /** Whether the last weigh-in asks for one more soak. */
    private boolean isShort() {
        return weighedFraction < aimFraction - SHORT_FRACTION && !isEnough();
    }

    /** Drained moisture after one more soak, by what the weights told so far. */
    private double soakedAgain() {
        return weighedFraction + script.pace().gainFraction(soaks, rateRatio);
    }

    /** When to soak again: as planned, or sooner where the grain is warmer than believed and would rest too long. */
    private int soakMinute(Line line) {
        if (soaks == 0) return line.minute();
        double meanC = (piece.now().grainC() + piece.ahead(line.minute()).grainC()) / 2;
        int longest = drainedMinute + minutes(script.rules().restSlip(meanC).softHours());
        if (line.minute() <= longest + UNNOTICED_MINUTES) return line.minute();
        int sooner = script.moments().last(drainedMinute + minutes(Rules.REST_SHORTEST_HOURS), longest, WORK_MINUTES);
        if (sooner == Moments.NEVER) return line.minute();
        Line drain = drains.get(Math.min(soaks, drains.size() - 1));
        int under = Math.max(0, drain.minute() - sooner - longestMinutes());
        return under < line.minute() - longest ? sooner : line.minute();
    }

    /** How long the soak that begins next may last without harm. */
    private int longestMinutes() {
        double waterC = script.blueprint().setup().fillC();
        return minutes(script.rules().immersionSlip(soaks + 1, waterC).softHours());
    }

    private void soak(Line line) {
        if (soaks > 0) {
            Slip slip = script.rules().restSlip(piece.meanC());
            piece.checkLate(line.id(), piece.hours(), slip.softHours(), slip.hardHours());
        }
        soaks++;
        piece.meet(line.visit());
    }

    private void drain(Line line) {
        Slip slip = script.rules().immersionSlip(soaks, piece.meanC());
        piece.checkLate(line.id(), piece.hours(), slip.softHours(), slip.hardHours());
        drainAndWeigh(new Visit(line.id(), ActKind.DRAIN, soaks, script.instant(piece.minute())), line.dryKg());
    }

    private void drainAndWeigh(Visit visit, double dryKg) {
        double softHours = Practice.CHITTED_UNDER_WATER.softHours(piece.meanC());
        double hardHours = Practice.CHITTED_UNDER_WATER.hardHours(piece.meanC());
        piece.checkLate(visit.id(), piece.chittedHours(), softHours, hardHours);
        Met met = piece.meet(visit);
        weighedFraction = 1 - dryKg / met.weighedKg();
        drainedMinute = met.minute();
        if (soaks <= drains.size()) rateRatio = script.pace().rateRatio(soaks - 1, weighedFraction);
    }

    /**
     * When to end a planned soak: as planned; the last one moved by as much as the weights so far ask, and any sooner
     * where chitted grain would be under too long.
     */
    private int drainMinute(Line line) {
        int start = piece.minute();
        int most = start
                + minutes(script.rules()
                        .immersionSlip(soaks, piece.now().grainC())
                        .softHours());
        int wished = line == lastDrain() && soaks > 1 ? wishedMinute(line) : line.minute();
        if (wished == line.minute() && !isUnderTooLong(wished)) return wished;
        int longest = Math.max(most, line.minute());
        while (longest > start + LOOK_MINUTES && isUnderTooLong(longest)) longest -= LOOK_MINUTES;
        int until = nearest(start + LOOK_MINUTES, Math.min(wished, longest), longest);
        if (until == Moments.NEVER) return line.minute();
        int soon = line == lastDrain() ? castable(start + LOOK_MINUTES, until) : until;
        return soon == Moments.NEVER ? until : soon;
    }

    /** The last moment in a span at which the steep can be drained so that it is cast before its roots mat. */
    private int castable(int fromMinute, int untilMinute) {
        int at = untilMinute;
        while (at != Moments.NEVER && at >= fromMinute) {
            int cast = script.moments().next(at + minutes(Rules.LAST_REST_SHORTEST_HOURS), WORK_MINUTES);
            boolean ripe = piece.ahead(at).steep().chitRatio() >= script.ripe();
            if (!ripe
                    || cast - at
                            <= minutes(Practice.CASTING.softHours(piece.now().grainC()))) return at;
            at = script.moments().last(fromMinute, at - WORK_MINUTES, WORK_MINUTES);
        }
        return Moments.NEVER;
    }

    /** The end of the last soak that the weights so far ask for. */
    private int wishedMinute(Line line) {
        double expected =
                drains.get(drains.size() - 2).act().expect().moisture().wetBasisFraction();
        if (Math.abs(weighedFraction - expected) < ENOUGH_FRACTION) return line.minute();
        double longerHours = missingHours(weighedFraction, rateRatio) - missingHours(expected, 1);
        return Math.max(piece.minute() + LOOK_MINUTES, line.minute() + minutes(longerHours));
    }

    /** Whether corns that have chitted, or will meanwhile, would be under water too long by then. */
    private boolean isUnderTooLong(int untilMinute) {
        double before = piece.now().steep().chitRatio();
        double mostPerHour = MOST_CHIT_RATIO
                * script.blueprint()
                        .setup()
                        .models()
                        .metabolism()
                        .chitPerHour(piece.now().grainC());
        if (!SteepModel.chitted(before + mostPerHour * (untilMinute - piece.minute()) / 60)) return false;
        PieceState then = piece.ahead(untilMinute);
        double after = then.steep().chitRatio();
        if (!SteepModel.chitted(after)) return false;
        double hours = (untilMinute - piece.minute()) / 60.0;
        double share = (after - Math.max(before, SteepModel.CHITTED_AT_RATIO)) / Math.max(1e-9, after - before);
        double underHours = SteepModel.chitted(before) ? hours : share * hours;
        return underHours > Practice.CHITTED_UNDER_WATER.softHours(then.grainC());
    }

    /** The moment nearest to the wished one at which somebody is there; NEVER if there is none. */
    private int nearest(int fromMinute, int wishedMinute, int untilMinute) {
        int wished = Math.max(fromMinute, Math.min(untilMinute, wishedMinute));
        int next = script.moments().next(wished, WORK_MINUTES);
        int last = script.moments().last(fromMinute, wished, WORK_MINUTES);
        if (next > untilMinute) return last;
        return last == Moments.NEVER || next - wished <= wished - last ? next : last;
    }

    /** First moment somebody is there once so many hours are over, earlier where the grain would be under too long. */
    private int attended(int start, double wishedHours) {
        double grainC = piece.now().grainC();
        double mostHours = SteepModel.chitted(piece.now().steep().chitRatio())
                ? Practice.CHITTED_UNDER_WATER.softHours(grainC)
                : script.rules().immersionSlip(Math.max(2, soaks + 1), grainC).softHours();
        int shortest = start + minutes(Rules.LATER_SOAK_SHORTEST_HOURS);
        return nearest(shortest, start + minutes(Math.min(mostHours, wishedHours)), start + minutes(mostHours));
    }

    /** One more soak, as soon as somebody is there and until somebody is; false when nobody can. */
    private boolean soakAgain() {
        int start = script.moments().next(drainedMinute + minutes(Rules.REST_SHORTEST_HOURS), WORK_MINUTES);
        Slip rest = script.rules().restSlip(piece.now().grainC());
        if ((start - drainedMinute) / 60.0 > rest.hardHours()) return false;
        int until = attended(start, missingHours(weighedFraction, rateRatio));
        if (until == Moments.NEVER) return false;
        piece.walkTo(start);
        soaks++;
        piece.meet(new Visit("steep-" + soaks + ".soak", ActKind.SOAK, soaks, script.instant(start)));
        piece.walkTo(until);
        Visit drain = new Visit("steep-" + soaks + ".drain", ActKind.DRAIN, soaks, script.instant(until));
        drainAndWeigh(drain, lastDrain().dryKg());
        return true;
    }

    /** Hours of one more soak of a lot that drinks so many times as fast as the plan believes, from a weighed moisture. */
    private double missingHours(double fromFraction, double ratio) {
        SteepModel told = script.blueprint().setup().models().steep();
        SteepModel believed = new SteepModel(told.rateRatio() * ratio, told.startChitRatio(), told.parameters());
        double weighedRatio = fromFraction / (1 - fromFraction);
        double aimRatio = aimFraction / (1 - aimFraction);
        double coreRatio = weighedRatio - believed.filledOuterRatio();
        double chitRatio = piece.now().steep().chitRatio();
        double waterC = script.blueprint().setup().fillC();
        return Math.min(24, believed.soakHoursTo(aimRatio, coreRatio, waterC, chitRatio));
    }

    private void checkMoisture() {
        double fraction = piece.now().mass().moisture().wetBasisFraction();
        if (fraction < steep.acceptable().lowFraction() - Rules.UNTOLD_MOISTURE_FRACTION)
            piece.breach(lastDrain().id(), Fault.TOO_DRY, Severity.SOFT);
        if (fraction > steep.acceptable().highFraction() + Rules.UNTOLD_MOISTURE_FRACTION)
            piece.breach(lastDrain().id(), Fault.TOO_WET, Severity.SOFT);
    }

    /** On to the floor when enough corns have chitted: as planned, sooner where waiting would harm, or later. */
    private void cast() {
        Line floor = script.first(ActKind.FLOOR);
        int at = look(floor, drainedMinute, minutes(Rules.LAST_REST_SHORTEST_HOURS));
        piece.walkTo(at);
        while (!piece.ripe().happened() || mayWait(floor, at)) {
            int later = look(floor, at, LOOK_MINUTES);
            double hard = script.rules().lastRestSlip(piece.meanC()).hardHours();
            if ((later - drainedMinute) / 60.0 > hard) {
                if (!piece.ripe().happened()) breachUnchitted(floor);
                break;
            }
            at = later;
            piece.walkTo(at);
        }
        if (piece.ripe().happened()) checkCasting(floor, at);
        piece.meet(new Visit(floor.id(), ActKind.FLOOR, 0, script.instant(at)));
    }

    private boolean mayWait(Line floor, int at) {
        if (floor.minute() <= at) return false;
        double ripeHours = (floor.minute() - Math.max(piece.ripe().atMinutes(), drainedMinute)) / 60;
        return ripeHours < Practice.CASTING.softHours(piece.now().grainC());
    }

    private void checkCasting(Line floor, int at) {
        double ripeHours = (at - Math.max(piece.ripe().atMinutes(), drainedMinute)) / 60;
        double grainC = piece.now().grainC();
        piece.checkLate(floor.id(), ripeHours, Practice.CASTING.softHours(grainC), Practice.CASTING.hardHours(grainC));
    }

    private void breachUnchitted(Line floor) {
        boolean half = piece.chitted().happened();
        piece.breach(floor.id(), Fault.UNDERGROWN, half ? Severity.SOFT : Severity.HARD);
    }

    /** Next moment somebody looks; the planned one is always among them. */
    private int look(Line floor, int lastMinute, int againMinutes) {
        int next = script.moments().next(lastMinute + againMinutes, WORK_MINUTES);
        boolean planned = floor.minute() > Math.max(lastMinute, drainedMinute + againMinutes - 1);
        return planned ? Math.min(floor.minute(), next) : next;
    }

    private static int minutes(double hours) {
        return (int) Math.round(60 * hours);
    }
}
