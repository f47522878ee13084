package piecewright.plan.search;

import java.util.Arrays;
import java.util.Optional;
import piecewright.plan.Outfit.Growing;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.Psychrometrics;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;
import piecewright.style.GrowthSchedule;

/**
 * What growth, wither and all after them cost at least. For each casting one bed is walked that grows as fast as any
 * may: the wettest, warmest and fullest this style allows; how far slower ones can be follows from it.
 */
final class FloorBound {
    /** Judgement: steps of the table and rounding of moisture; no piece outgrows the walked one by more. */
    private static final double SAFE_GROWTH_RATIO = 0.01;
    /** Days after the first possible loading beyond which waiting never pays. */
    private static final int LATEST_MINUTES = 7 * 24 * 60;

    private static final int STEP_MINUTES = 15;
    /** Judgement: no bed that a plan allows is steadily warmer than its air by more. */
    private static final double WARMEST_RISE_K = 12;
    /** Judgement: the wettest piece lies this much deeper than the usual one. */
    private static final double DEEPER_RATIO = 1.06;
    /** Judgement: share of its warmth the slowest bed keeps over a quarter of an hour. */
    private static final double COOLING_RATIO = 0.97;

    private final Space space;
    private final FloorLegs.Beds beds;
    private final After after;
    private final int goal;
    private final GrowthSchedule growth;
    private final double[] moistureClasses;
    private final double[] fastestGrowth;
    private final double[][] witherLoads;
    private final double[] greenLoads;
    private final double greenFraction;
    private final double wettestEndFraction;
    private final boolean greenPacks;
    private final double driestPerHour;
    /** By class (the last is the wither's), candidate and step of growth: what was worked out already; else NaN. */
    private final double[][] knownMinutes;

    private final Outlook[] outlooks;

    /** Growth since casting at each later candidate, by class of moisture; ends where nothing longer is worth it. */
    private record Outlook(double[][] grownRatio) {}

    /** What can follow the end of growth. */
    record After(KilnBound kiln, Optional<CouchBound> couch) {
        /** From ending growth at a candidate with that moisture or more, wet basis. */
        double fromTheEnd(int at, double moistureFraction) {
            return couch.isPresent() ? couch.get().fromPackAtLeast(at) : kiln.fromLoadAtLeast(at, moistureFraction);
        }
    }

    FloorBound(Space space, FloorLegs.Beds beds, After after, int goal) {
        this.space = space;
        this.beds = beds;
        this.after = after;
        this.goal = goal;
        this.growth = space.setup().style().growth();
        var steep = space.setup().style().steep();
        double target = steep.targetFraction();
        double high = steep.acceptable().highFraction();
        this.moistureClasses = new double[] {Math.min(high, target + 0.005), Math.min(high, target + 0.01), high};
        this.outlooks = new Outlook[space.grid().size()];
        this.fastestGrowth = fastestGrowth();
        this.greenLoads = new double[space.grid().size()];
        Arrays.fill(greenLoads, Double.NaN);
        this.witherLoads = new double[space.grid().size()][];
        this.greenFraction = greenFraction();
        this.wettestEndFraction = space.setup()
                .couching()
                .map(one -> one.schedule().packing().highFraction())
                .orElse(1.0);
        this.greenPacks = greenFraction <= wettestEndFraction;
        this.driestPerHour = driestPerHour();
        this.knownMinutes =
                new double[moistureClasses.length + 1][STEPS * space.grid().size()];
        for (double[] row : knownMinutes) Arrays.fill(row, Double.NaN);
    }

    int classes() {
        return moistureClasses.length;
    }

    /** The class of a steep-out moisture: the first that is as wet. */
    int classOf(double moistureFraction) {
        int row = 0;
        while (row < moistureClasses.length - 1 && moistureFraction > moistureClasses[row]) row++;
        return row;
    }

    /** What a piece of that class pays for its steep-out moisture at least. */
    double leastMoistureCost(int row) {
        double target = space.setup().style().steep().targetFraction();
        return row == 0 ? 0 : space.rules().steepOutMoisture(Math.max(target, moistureClasses[row - 1]));
    }

    /**
     * Cost-minutes still to come at least from casting.
     *
     * @param row class of its moisture
     * @param growthRatio growth at casting, or more
     */
    double fromFloor(int at, int row, double growthRatio) {
        int step = stepOf(growthRatio);
        double known = knownMinutes[row][at * STEPS + step];
        if (!Double.isNaN(known)) return known;
        double worked = leastFromFloor(at, row, step * GROWTH_STEP_RATIO);
        knownMinutes[row][at * STEPS + step] = worked;
        return worked;
    }

    private static int stepOf(double growthRatio) {
        return (int) Math.min(STEPS - 1, Math.ceil(growthRatio / GROWTH_STEP_RATIO - 1e-9));
    }

    private double leastFromFloor(int at, int row, double growthRatio) {
        if (!space.canBegin(space.stops().floor(), at)) return Double.POSITIVE_INFINITY;
        if (goal == space.stops().floor()) return 0;
        double[] grown = outlook(at).grownRatio()[row];
        double least = Double.POSITIVE_INFINITY;
        TimeGrid grid = space.grid();
        for (int to = grid.nextCoarse(at + 1); to - at < grown.length; to = grid.nextCoarse(to + 1)) {
            double grownTo = growthRatio + grown[to - at] + SAFE_GROWTH_RATIO;
            if (grownTo < growth.acceptable().lowFraction() - FloorLegs.WITHER_GROWTH_RATIO) continue;
            if (beds.growing().costMinutes(at, to) < least) least = Math.min(least, leastTo(at, to, grownTo));
        }
        return least;
    }

    private double leastTo(int at, int to, double grownTo) {
        Stops stops = space.stops();
        double turning = beds.growing().costMinutes(at, to);
        if (turning == Double.POSITIVE_INFINITY) return turning;
        double least = Double.POSITIVE_INFINITY;
        if (growth.wither().highHours() > 0 && goal >= stops.wither() && space.canBegin(stops.wither(), to)) {
            least = turning + space.stepCostMinutes(at, stops.wither(), to) + fromWither(to, grownTo);
        }
        int ends = stops.growthEnds();
        if (grownTo >= growth.acceptable().lowFraction() && greenPacks && space.canBegin(ends, to)) {
            double far = Math.min(grownTo, growth.acrospireFraction());
            double loads =
                    turning + space.rules().growthAtTheEnd(far) + space.stepCostMinutes(at, ends, to) + greenLoad(to);
            least = Math.min(least, loads);
        }
        return least;
    }

    private double greenLoad(int at) {
        if (Double.isNaN(greenLoads[at])) greenLoads[at] = after.fromTheEnd(at, greenFraction);
        return greenLoads[at];
    }

    /** No piece comes drier from a covered floor. */
    private double greenFraction() {
        return Math.min(
                growth.keepMoistureFraction(),
                space.setup().style().steep().acceptable().lowFraction());
    }

    /** Cost-minutes still to come at least from spreading to wither a piece that has grown so far. */
    double fromWither(int at, double growthRatio) {
        int step = stepOf(growthRatio);
        double[] wither = knownMinutes[knownMinutes.length - 1];
        double known = wither[at * STEPS + step];
        if (!Double.isNaN(known)) return known;
        double worked = leastFromWither(at, step * GROWTH_STEP_RATIO);
        wither[at * STEPS + step] = worked;
        return worked;
    }

    private double leastFromWither(int at, double growthRatio) {
        double[] loads = witherLoads(at);
        int start = space.grid().minute(at);
        double low = growth.acceptable().lowFraction();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < loads.length; i++) {
            if (loads[i] >= least) continue;
            double grownTo = growthRatio
                    + SAFE_GROWTH_RATIO
                    + grownSince(start, space.grid().minute(at + i));
            if (grownTo < low) continue;
            double grows = space.rules().growthAtTheEnd(Math.min(grownTo, growth.acrospireFraction()));
            least = Math.min(least, loads[i] + grows);
        }
        return least;
    }

    /** By places after a wither's start: turning, loading there and all after it, whatever has grown. */
    private double[] witherLoads(int at) {
        double[] known = witherLoads[at];
        if (known != null) return known;
        TimeGrid grid = space.grid();
        int ends = space.stops().growthEnds();
        int start = grid.minute(at);
        double longest = space.rules().longestWitherHours();
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * longest) + 1));
        double[] loads = new double[Math.max(1, end - at)];
        Arrays.fill(loads, Double.POSITIVE_INFINITY);
        int first = grid.firstAtOrAfter(start + (int) (60 * Rules.WITHER_SHORTEST_HOURS));
        for (int to = grid.nextCoarse(first); to < end; to = grid.nextCoarse(to + 1)) {
            if (!space.canBegin(ends, to) || !space.canBegin(space.stops().wither(), at)) continue;
            double driest = driestAfter((grid.minute(to) - start) / 60.0);
            if (driest > wettestEndFraction) continue;
            loads[to - at] = beds.withering().costMinutes(at, to)
                    + space.stepCostMinutes(at, ends, to)
                    + after.fromTheEnd(to, Math.max(space.rules().driestFraction(), driest));
        }
        witherLoads[at] = loads;
        return loads;
    }

    /** Growth of a withering bed between two minutes at most. */
    private double grownSince(int fromMinute, int untilMinute) {
        int last = fastestGrowth.length - 1;
        int until = Math.min(last, untilMinute / STEP_MINUTES + 1);
        return fastestGrowth[until] - fastestGrowth[Math.min(last, fromMinute / STEP_MINUTES)];
    }

    /** Growth since the origin of a withering bed as warm as it can steadily be and wetter than any that withers. */
    private double[] fastestGrowth() {
        TimeGrid grid = space.grid();
        int last = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1);
        double[] grown = new double[last / STEP_MINUTES + 2];
        Metabolism metabolism = space.setup().models().metabolism();
        double wettest = moistureClasses[moistureClasses.length - 1];
        double warmC = -50;
        for (int i = 1; i < grown.length; i++) {
            double airC = space.setup().air().wither().airC((i - 0.5) * STEP_MINUTES / 60);
            double steadyC =
                    warmestSteadyC(space.setup(), space.setup().outfit().withering(), airC, wettest);
            warmC = Math.max(steadyC, steadyC + (warmC - steadyC) * COOLING_RATIO);
            grown[i] = grown[i - 1] + metabolism.growthPerHour(warmC, wettest) * STEP_MINUTES / 60;
        }
        return grown;
    }

    /** Steady temperature of the liveliest bed in such air, approached from above. */
    private static double warmestSteadyC(Setup setup, Growing spread, double airC, double wettest) {
        Bed bed = new Bed(setup.models().growth());
        double depthM = spread.depthCm() / 100 * DEEPER_RATIO;
        double dryKgPerM2 = setup.dryMatterKg() / spread.areaM2();
        double steadyC = airC + WARMEST_RISE_K;
        for (int i = 0; i < 6; i++) {
            double heatW = setup.models().metabolism().heatWPerKgDry(steadyC, wettest, 1);
            steadyC = Math.min(steadyC, airC + bed.steadyRiseK(heatW, depthM, dryKgPerM2));
        }
        return steadyC;
    }

    /** Moisture no withering piece falls below within so many hours, in the driest air of the horizon. */
    private double driestAfter(double hours) {
        double rest = space.setup().models().growth().restWaterRatio();
        double from = KilnHeat.ratioOf(greenFraction);
        double ratio = rest + (from - rest) * Math.exp(-driestPerHour * hours);
        return ratio / (1 + ratio);
    }

    private double driestPerHour() {
        var parameters = space.setup().models().growth();
        double dryKg = space.setup().dryMatterKg() * LEAST_DRY_FRACTION;
        double areaM2 = space.setup().outfit().withering().areaM2();
        Bed bed = new Bed(parameters);
        double laidM = bed.laidDepthM(new GrainMass(dryKg, dryKg, 0), areaM2);
        return bed.waterLossPerHour(parameters.restWaterRatio() + 1, driestKPa(), laidM, 1);
    }

    /** Judgement: growth is rounded up to whole steps of this; never down, so the bound stays one. */
    private static final double GROWTH_STEP_RATIO = 0.01;

    private static final int STEPS = 140;
    /** Judgement: dry matter left at the end of growth, share of what was steeped, at least. */
    private static final double LEAST_DRY_FRACTION = 0.85;

    private double driestKPa() {
        var air = space.setup().air().wither();
        double warmestC = warmestAirC(space.grid(), air);
        return Psychrometrics.vapourPressureDeficitKPa(warmestC + 1, air.humidityFraction());
    }

    private static double warmestAirC(TimeGrid grid, Surroundings air) {
        double warmestC = -50;
        for (int at = 0; at < grid.size(); at++) warmestC = Math.max(warmestC, air.airC(grid.minute(at) / 60.0));
        return warmestC;
    }

    /** No piece on the floor or withering gets steadily warmer, °C. */
    static double warmestC(Space space) {
        Setup setup = space.setup();
        double wettest = setup.style().steep().acceptable().highFraction();
        double growingC = warmestAirC(space.grid(), setup.air().floor());
        double witheringC = warmestAirC(space.grid(), setup.air().wither());
        return Math.max(
                warmestSteadyC(setup, setup.outfit().growing(), growingC, wettest),
                warmestSteadyC(setup, setup.outfit().withering(), witheringC, wettest));
    }

    private Outlook outlook(int at) {
        Outlook known = outlooks[at];
        if (known != null) return known;
        Outlook made = walk(at);
        outlooks[at] = made;
        return made;
    }

    private Outlook walk(int at) {
        TimeGrid grid = space.grid();
        double wettest = moistureClasses[moistureClasses.length - 1];
        double ratio = KilnHeat.ratioOf(wettest);
        double warmC =
                Math.max(space.setup().fillC(), space.setup().air().steep().airC(grid.minute(at) / 60.0) + 6);
        Grain fullest = new Grain(ratio, ratio, ratio, 0, 2, Rules.CAST_GROWTH_RATIO, 1, warmC);
        BedWalk walk = new BedWalk(FloorLegs.floorSetting(space.setup()), fullest, grid.minute(at));
        int end = grid.firstAtOrAfter(grid.minute(at) + FloorLegs.LONGEST_GROWTH_MINUTES + 1);
        double[][] grown = new double[moistureClasses.length][end - at];
        int latest = Integer.MAX_VALUE;
        int to = grid.nextCoarse(at + 1);
        int last = at;
        for (; to < end && grid.minute(to) < latest; to = grid.nextCoarse(to + 1)) {
            Grain before = walk.grain();
            walk.to(grid.minute(to));
            double step = walk.grain().growthRatio() - before.growthRatio();
            for (int row = 0; row < grown.length; row++) {
                grown[row][to - at] =
                        grown[row][last - at] + step * slower(row, walk.grain().moistureFraction());
            }
            last = to;
            boolean canLoad = walk.grain().growthRatio() >= growth.acrospireFraction();
            if (canLoad && latest == Integer.MAX_VALUE) latest = grid.minute(to) + LATEST_MINUTES;
        }
        for (int row = 0; row < grown.length; row++) grown[row] = Arrays.copyOf(grown[row], last - at + 1);
        return new Outlook(grown);
    }

    /** Growth of a drier class as a share of the wettest one's, which has come to this moisture. */
    private double slower(int row, double wettestNowFraction) {
        double behind = moistureClasses[moistureClasses.length - 1] - moistureClasses[row];
        return Metabolism.growthMoistureRatio(wettestNowFraction - behind + 0.002)
                / Metabolism.growthMoistureRatio(wettestNowFraction);
    }
}
