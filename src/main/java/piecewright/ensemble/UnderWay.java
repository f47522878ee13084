package piecewright.ensemble;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;
import piecewright.ensemble.Breach.Severity;
import piecewright.plan.ActKind;
import piecewright.plan.PhaseKind;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.steep.SteepModel;

/** The piece while somebody follows a plan through one reality: scratch space of one run, mutable, used by one thread. */
final class UnderWay {
    /** Judgement: half an hour before the kiln; {@code StridesTest} holds it against the five minutes of the reference. */
    private static final double STRIDE_HOURS = 0.5;
    /** Judgement: a quarter of an hour in the kiln; the same test. */
    private static final double KILN_STRIDE_HOURS = 0.25;
    /** Judgement: a drained weigh-in errs by half a point of moisture. */
    private static final double DRAIN_SD_FRACTION = 0.005;
    /** Judgement: a quarter of an hour over a limit harms nothing. */
    private static final double UNNOTICED_HOURS = 0.25;
    /** Judgement: moisture at the break, where the exhaust is no longer saturated; practice. */
    private static final double BREAK_FRACTION = 0.23;

    private final Script script;
    private final Reality reality;
    private final RandomGenerator luck;
    private final Map<String, Met> met = new LinkedHashMap<>();
    private final List<Breach> breaches = new ArrayList<>();
    private final Crossing chitted = new Crossing(1);
    private final Crossing ripe;
    private final Crossing grown;
    private final Crossing broken = new Crossing(-BREAK_FRACTION);
    private PieceState now;
    private Passing passing = Passing.none();
    private int minute;
    private int sinceMinute;
    private double degreeHours;
    private double chittedHours;
    private double lossPerHour;

    UnderWay(Script script, Reality reality, RandomGenerator luck) {
        this.script = script;
        this.reality = reality;
        this.luck = luck;
        this.now = reality.raw();
        this.minute = script.lines().get(0).minute();
        this.sinceMinute = minute;
        this.ripe = new Crossing(script.ripe());
        this.grown = new Crossing(script.endOfGrowth().growthRatio());
    }

    /** Lets the present phase run until that minute. */
    void walkTo(int untilMinute) {
        Optional<Stage> stage = passing.expected();
        if (stage.isEmpty()) {
            minute = Math.max(minute, untilMinute);
            return;
        }
        boolean heated = passing.kind() == PhaseKind.DRYING || passing.kind() == PhaseKind.CURING;
        double strideMinutes = 60 * (heated ? KILN_STRIDE_HOURS : STRIDE_HOURS);
        double from = minute;
        while (untilMinute - from > 1e-6) {
            double step = Math.min(strideMinutes, untilMinute - from);
            PieceState before = now;
            now = stage.get().step(before, from / 60, step / 60);
            watch(before, from, step);
            from += step;
        }
        minute = Math.max(minute, untilMinute);
    }

    private void watch(PieceState before, double from, double step) {
        double to = from + step;
        chitted.rose(before.steep().chitRatio(), now.steep().chitRatio(), from, to);
        ripe.rose(before.steep().chitRatio(), now.steep().chitRatio(), from, to);
        grown.rose(before.growth().growthRatio(), now.growth().growthRatio(), from, to);
        if (passing.kind() == PhaseKind.DRYING || passing.kind() == PhaseKind.CURING) {
            broken.rose(-moisture(before), -moisture(now), from, to);
        }
        boolean drowning = passing.kind() == PhaseKind.IMMERSION
                && SteepModel.chitted(before.steep().chitRatio());
        if (drowning) chittedHours += step / 60;
        degreeHours += (before.grainC() + now.grainC()) / 2 * step / 60;
        lossPerHour = 60 / step * (1 - now.mass().totalKg() / before.mass().totalKg());
    }

    private static double moisture(PieceState state) {
        return state.mass().moisture().wetBasisFraction();
    }

    /** Does an act now, sprinkling if the rule says so, and begins what follows it. */
    Met meet(Visit visit) {
        PieceState before = now;
        double waterKg = reality.sprinklingKg(
                visit, before, passing, script.endOfGrowth().visit().at());
        now = reality.acted(visit, before, waterKg);
        PieceState found = visit.kind() == ActKind.DEROOT ? now : before;
        Met here = new Met(visit, minute, found, weighed(visit, found), meanC());
        met.put(visit.id(), here);
        passing = reality.after(visit, passing);
        if (passing.expected().isPresent() && piecewright.plan.search.UnderWay.bounds(visit.kind())) {
            now = passing.expected().get().entered(now);
        }
        sinceMinute = minute;
        degreeHours = 0;
        chittedHours = 0;
        return here;
    }

    private double weighed(Visit visit, PieceState found) {
        double shown = found.mass().totalKg();
        if (visit.kind() == ActKind.DRAIN) {
            shown *= 1 + luck.nextGaussian() * DRAIN_SD_FRACTION / (1 - moisture(found));
        }
        return onTheScale(shown);
    }

    /** What the scale shows: off by up to half a step either way. */
    private double onTheScale(double massKg) {
        double stepKg = script.blueprint().request().house().kit().scale().stepG() / 1000;
        return massKg + stepKg * (luck.nextDouble() - 0.5);
    }

    /** Moisture worked out from a weight and the dry matter the plan expects there. */
    double weighedFraction(double dryKg) {
        return 1 - dryKg / onTheScale(now.mass().totalKg());
    }

    /** Mean acrospire as counted: off by a factor of e^sd. */
    double counted(double sd) {
        return now.growth().growthRatio() * Math.exp(sd * luck.nextGaussian());
    }

    void breach(String actId, Fault fault, Severity severity) {
        breaches.add(new Breach(actId, fault, severity));
    }

    /** Marks an act late when its hours are past soft, or hard. */
    void checkLate(String actId, double hours, double softHours, double hardHours) {
        if (hours > hardHours + UNNOTICED_HOURS) breach(actId, Fault.LATE, Severity.HARD);
        else if (hours > softHours + UNNOTICED_HOURS) breach(actId, Fault.LATE, Severity.SOFT);
    }

    PieceState now() {
        return now;
    }

    int minute() {
        return minute;
    }

    /** Hours since the last act. */
    double hours() {
        return (minute - sinceMinute) / 60.0;
    }

    double meanC() {
        return minute > sinceMinute ? degreeHours / hours() : now.grainC();
    }

    /** Hours under water since the last act with the corns chitted. */
    double chittedHours() {
        return chittedHours;
    }

    /** Share of its weight the piece lost per hour in the last step. */
    double lossPerHour() {
        return lossPerHour;
    }

    Crossing chitted() {
        return chitted;
    }

    Crossing ripe() {
        return ripe;
    }

    Crossing grown() {
        return grown;
    }

    Crossing broken() {
        return broken;
    }

    Map<String, Met> met() {
        return met;
    }

    List<Breach> breaches() {
        return breaches;
    }
}
