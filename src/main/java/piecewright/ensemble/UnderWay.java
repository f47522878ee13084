package piecewright.ensemble;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;
import piecewright.ensemble.Breach.Severity;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.PhaseKind;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.steep.SteepModel;

/** The piece while somebody follows a plan through one reality: scratch space of one run, mutable, used by one thread. */
final class UnderWay {
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
    private Passing foreseen = passing;
    private Going going = new Going(passing);
    private Going foresight = going;
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
        now = going.walked(now, minute, Math.min(untilMinute, lastMinute), this::watch);
        minute = Math.max(minute, untilMinute);
    }

    /** What the piece is foreseen to be if the present phase runs until that minute; nothing happens. */
    PieceState ahead(int untilMinute) {
        return foresight.ahead(now, minute, Math.min(untilMinute, lastMinute));
    }

    private void watch(PieceState before, PieceState after, double from, double step) {
        double to = from + step;
        chitted.rose(before.steep().chitRatio(), after.steep().chitRatio(), from, to);
        ripe.rose(before.steep().chitRatio(), after.steep().chitRatio(), from, to);
        grown.rose(before.growth().growthRatio(), after.growth().growthRatio(), from, to);
        if (going.kind() == PhaseKind.DRYING || going.kind() == PhaseKind.CURING) {
            broken.rose(-moisture(before), -moisture(after), from, to);
            dry.rose(-moisture(before), -moisture(after), from, to);
        }
        pile.saw(going.kind(), before.grainC(), after.grainC(), from, to);
        boolean drowning = going.kind() == PhaseKind.IMMERSION
                && SteepModel.chitted(before.steep().chitRatio());
        if (drowning) chittedHours += step / 60;
        degreeHours += (before.grainC() + after.grainC()) / 2 * step / 60;
        lossPerHour = 60 / step * (1 - after.mass().totalKg() / before.mass().totalKg());
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
        goOn(reality.after(visit, passing), visit);
        if (piecewright.plan.search.UnderWay.bounds(visit.kind())) now = going.entered(now);
        sinceMinute = minute;
        degreeHours = 0;
        chittedHours = 0;
        return here;
    }

    private void goOn(Passing next, Visit visit) {
        foreseen = reality.foreseen(visit, foreseen, next);
        passing = next;
        going = new Going(next);
        foresight = foreseen == next ? going : new Going(foreseen);
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
        foreseen = passing;
        going = new Going(passing);
        foresight = going;
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
