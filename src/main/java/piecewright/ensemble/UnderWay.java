package piecewright.ensemble;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.PhaseKind;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.steep.SteepModel;

/** The piece while somebody follows a plan through one reality: scratch space of one run, mutable, used by one thread. */
final class UnderWay {
    /** Judgement: half an hour before the heat; {@code RehearsalTest} holds it against the five minutes of the reference. */
    private static final double STRIDE_HOURS = 0.5;
    /** Judgement: a quarter of an hour in couch and kiln; the same test. A pile near its peak takes the reference's step. */
    private static final double HEATED_STRIDE_HOURS = 0.25;

    /** Judgement: from here on a pile's heat is cut within minutes, °C. */
    private static final double STIFF_C = 40;

    private static final Set<PhaseKind> HEATED =
            EnumSet.of(PhaseKind.COUCHING, PhaseKind.COOLING, PhaseKind.DRYING, PhaseKind.CURING);

    /** Judgement: a drained weigh-in errs by half a point of moisture. */
    private static final double DRAIN_SD_FRACTION = 0.005;
    /** Judgement: a quarter of an hour over a limit harms nothing. */
    private static final double UNNOTICED_HOURS = 0.25;
    /** Judgement: moisture at the break, where the exhaust is no longer saturated; practice. */
    private static final double BREAK_FRACTION = 0.23;

    /** Judgement: nobody counts corns so well that the last half percent of a chit's way matters. */
    private static final double RIPE_RATIO = 0.995;

    private final Script script;
    private final Reality reality;
    private final RandomGenerator luck;
    private final Map<String, Met> met = new LinkedHashMap<>();
    private final List<Breach> breaches = new ArrayList<>();
    private final Crossing chitted = new Crossing(1);
    private final Crossing ripe;
    private final Crossing grown;
    private final Crossing broken = new Crossing(-BREAK_FRACTION);
    private final Pile pile = new Pile();
    private Crossing dry = new Crossing(0);
    private PieceState now;
    /** Judgement: what lies about for a week after the plan's last act, because nobody comes, is followed no further. */
    private static final int LATEST_MINUTES = 7 * 24 * 60;

    private Passing passing = Passing.none();
    private Passing foreseen = Passing.none();
    private final int lastMinute;
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
        this.lastMinute = script.lines().get(script.lines().size() - 1).minute() + LATEST_MINUTES;
        this.sinceMinute = minute;
        this.ripe = new Crossing(RIPE_RATIO * script.ripe());
        this.grown = new Crossing(script.endOfGrowth().growthRatio());
    }

    /** Lets the present phase run until that minute. */
    void walkTo(int untilMinute) {
        Optional<Stage> stage = passing.expected();
        if (stage.isEmpty()) {
            minute = Math.max(minute, untilMinute);
            return;
        }
        double from = minute;
        double until = Math.min(untilMinute, lastMinute);
        while (until - from > 1e-6) {
            double step = Math.min(strideMinutes(now), until - from);
            PieceState before = now;
            now = stage.get().step(before, from / 60, step / 60);
            watch(before, from, step);
            from += step;
        }
        minute = Math.max(minute, untilMinute);
    }

    private double strideMinutes(PieceState state) {
        if (!HEATED.contains(passing.kind())) return 60 * STRIDE_HOURS;
        boolean stiff = passing.kind() == PhaseKind.COUCHING && state.grainC() > STIFF_C;
        return 60 * (stiff ? Stage.STEP_HOURS : HEATED_STRIDE_HOURS);
    }

    /** What the piece is foreseen to be if the present phase runs until that minute; nothing happens. */
    PieceState ahead(int untilMinute) {
        if (foreseen.expected().isEmpty()) return now;
        PieceState then = now;
        double from = minute;
        double until = Math.min(untilMinute, lastMinute);
        while (until - from > 1e-6) {
            double step = Math.min(strideMinutes(then), until - from);
            then = foreseen.expected().get().step(then, from / 60, step / 60);
            from += step;
        }
        return then;
    }

    private void watch(PieceState before, double from, double step) {
        double to = from + step;
        chitted.rose(before.steep().chitRatio(), now.steep().chitRatio(), from, to);
        ripe.rose(before.steep().chitRatio(), now.steep().chitRatio(), from, to);
        grown.rose(before.growth().growthRatio(), now.growth().growthRatio(), from, to);
        if (passing.kind() == PhaseKind.DRYING || passing.kind() == PhaseKind.CURING) {
            broken.rose(-moisture(before), -moisture(now), from, to);
            dry.rose(-moisture(before), -moisture(now), from, to);
        }
        pile.saw(passing.kind(), before.grainC(), now.grainC(), from, to);
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
        Met here = record(visit, before);
        foreseen = reality.foreseen(visit, foreseen);
        passing = reality.after(visit, passing);
        if (passing.expected().isPresent() && piecewright.plan.search.UnderWay.bounds(visit.kind())) {
            now = passing.expected().get().entered(now);
        }
        sinceMinute = minute;
        degreeHours = 0;
        chittedHours = 0;
        return here;
    }

    /** The piece is turned in the air, and loses so many kelvin. */
    void cool(double lossK) {
        now = now.withGrainC(now.grainC() - lossK);
    }

    /** Keeps somebody at the oven with the piece until that minute, and leaves it so. */
    Met meetAtTheOven(Visit visit, PieceState out, int untilMinute) {
        PieceState in = now;
        now = out;
        Met here = record(visit, in);
        passing = Passing.none();
        foreseen = Passing.none();
        minute = untilMinute;
        sinceMinute = minute;
        return here;
    }

    /** The piece as the act begins; after it for the last one. */
    private Met record(Visit visit, PieceState before) {
        List<Line> lines = script.lines();
        PieceState found = lines.get(lines.size() - 1).id().equals(visit.id()) ? now : before;
        Met here = new Met(visit, minute, found, weighed(visit, found), meanC());
        met.put(visit.id(), here);
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

    RandomGenerator luck() {
        return luck;
    }

    Reality reality() {
        return reality;
    }

    Pile pile() {
        return pile;
    }

    /** Watches from now on for the malt to be so dry, wet basis. */
    void watchFor(double moistureFraction) {
        dry = new Crossing(-moistureFraction);
    }

    /** When it was as dry as was watched for. */
    Crossing dry() {
        return dry;
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
