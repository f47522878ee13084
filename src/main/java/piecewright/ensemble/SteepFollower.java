package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Practice;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.plan.Timetable.Visit;
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

    private final Script script;
    private final UnderWay piece;
    private final SteepSchedule steep;
    private final List<Line> drains;
    private final double aimFraction;
    private int soaks;
    private int drainedMinute;
    private double weighedFraction;

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
        for (Line line : planned()) {
            if (line.visit().kind() == ActKind.SOAK) {
                if (soaks >= steep.fewestImmersions() && weighedFraction >= aimFraction - ENOUGH_FRACTION) break;
                piece.walkTo(line.minute());
                soak(line);
            } else {
                piece.walkTo(line == lastDrain() && soaks > 1 ? drainMinute(line) : line.minute());
                drain(line);
            }
        }
        double shortOf = Math.max(steep.acceptable().lowFraction(), aimFraction - SHORT_FRACTION);
        for (int extra = 0; extra < MOST_EXTRA && weighedFraction < shortOf; extra++) {
            if (!soakAgain()) break;
        }
        checkMoisture();
        List<Line> heaps = script.of(ActKind.HEAP);
        if (heaps.isEmpty() || !new HeapFollower(script, piece).follow(heaps.get(0), drainedMinute)) cast();
    }

    private List<Line> planned() {
        List<Line> lines = new ArrayList<>();
        for (Line line : script.lines()) {
            if (line.visit().kind() == ActKind.HEAP || line.visit().kind() == ActKind.FLOOR) break;
            lines.add(line);
        }
        return lines;
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
    }

    /** When to end the last planned soak: moved inside its window by as much as the weigh-in before it was off. */
    private int drainMinute(Line line) {
        double expected =
                drains.get(drains.size() - 2).act().expect().moisture().wetBasisFraction();
        if (Math.abs(weighedFraction - expected) < SHORT_FRACTION) return line.minute();
        int earliest =
                Moments.minute(script.blueprint().origin(), line.act().window().earliest());
        int latest =
                Moments.minute(script.blueprint().origin(), line.act().window().latest());
        int wished = line.minute() + minutes(missingHours(weighedFraction) - missingHours(expected));
        wished = Math.max(piece.minute() + LOOK_MINUTES, Math.max(earliest, Math.min(latest, wished)));
        int until = script.moments().next(wished, WORK_MINUTES);
        if (until > latest) until = script.moments().last(piece.minute() + LOOK_MINUTES, latest, WORK_MINUTES);
        return until == Moments.NEVER ? line.minute() : until;
    }

    /** First moment somebody is there once so many hours are over, earlier where the grain would be under too long. */
    private int attended(int start, double wishedHours) {
        double grainC = piece.now().grainC();
        double mostHours = SteepModel.chitted(piece.now().steep().chitRatio())
                ? Practice.CHITTED_UNDER_WATER.softHours(grainC)
                : script.rules().immersionSlip(Math.max(2, soaks + 1), grainC).softHours();
        int shortest = start + minutes(Rules.LATER_SOAK_SHORTEST_HOURS);
        int longest = start + minutes(mostHours);
        int wished = Math.max(shortest, Math.min(longest, start + minutes(Math.min(mostHours, wishedHours))));
        int until = script.moments().next(wished, WORK_MINUTES);
        return until <= longest ? until : script.moments().last(shortest, longest, WORK_MINUTES);
    }

    /** One more soak, as soon as somebody is there and until somebody is; false when nobody can. */
    private boolean soakAgain() {
        int start = script.moments().next(drainedMinute + minutes(Rules.REST_SHORTEST_HOURS), WORK_MINUTES);
        Slip rest = script.rules().restSlip(piece.now().grainC());
        if ((start - drainedMinute) / 60.0 > rest.hardHours()) return false;
        int until = attended(start, missingHours(weighedFraction));
        if (until == Moments.NEVER) return false;
        piece.walkTo(start);
        soaks++;
        piece.meet(new Visit("steep-" + soaks + ".soak", ActKind.SOAK, soaks, script.instant(start)));
        piece.walkTo(until);
        Visit drain = new Visit("steep-" + soaks + ".drain", ActKind.DRAIN, soaks, script.instant(until));
        drainAndWeigh(drain, lastDrain().dryKg());
        return true;
    }

    /** Hours of one more soak by the plan's own belief of the lot, from a moisture as weighed. */
    private double missingHours(double fromFraction) {
        SteepModel believed = script.blueprint().setup().models().steep();
        double weighedRatio = fromFraction / (1 - fromFraction);
        double aimRatio = aimFraction / (1 - aimFraction);
        double coreRatio = weighedRatio - believed.filledOuterRatio();
        double chitRatio = piece.now().steep().chitRatio();
        double waterC = script.blueprint().setup().fillC();
        return Math.min(24, believed.soakHoursTo(aimRatio, coreRatio, waterC, chitRatio));
    }

    private void checkMoisture() {
        double fraction = piece.now().mass().moisture().wetBasisFraction();
        if (fraction < steep.acceptable().lowFraction())
            piece.breach(lastDrain().id(), Fault.TOO_DRY, Severity.SOFT);
        if (fraction > steep.acceptable().highFraction())
            piece.breach(lastDrain().id(), Fault.TOO_WET, Severity.SOFT);
    }

    /** On to the floor when enough corns have chitted: as planned, sooner where waiting would harm, or later. */
    private void cast() {
        Line floor = script.first(ActKind.FLOOR);
        int at = look(floor, drainedMinute, minutes(Rules.LAST_REST_SHORTEST_HOURS));
        piece.walkTo(at);
        while (!piece.ripe().happened() || mayWait(floor, at)) {
            int later = look(floor, at, LOOK_MINUTES);
            double hard = script.rules().restSlip(piece.meanC()).hardHours();
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
        double hours = (floor.minute() - at) / 60.0;
        return hours > 0 && hours < Practice.CASTING.softHours(piece.now().grainC());
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
