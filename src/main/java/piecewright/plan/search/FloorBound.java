package piecewright.plan.search;

import java.util.Arrays;
import java.util.Optional;
import piecewright.plan.Outfit.Growing;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;
import piecewright.process.germination.FloorActs;
import piecewright.quantity.FractionRange;
import piecewright.style.GrowthSchedule;

/**
 * What growth, wither and all after them cost at least. For each casting one bed is walked that grows as fast as any
 * may: the wettest, warmest and fullest this style allows; how far slower ones can be follows from it.
 */
final class FloorBound {
    /** Judgement: covers what drying takes off the distance between two pieces. */
    private static final double SAFE_DRYING_FRACTION = 0.002;
    /** Judgement: width of a class of moisture at casting, wet basis. */
    private static final double CLASS_FRACTION = 0.005;
    /** Judgement: steps of the table and rounding of moisture; no piece outgrows the walked one by more. */
    private static final double SAFE_GROWTH_RATIO = 0.01;
    /** Days after the first possible loading beyond which waiting never pays. */
    private static final int LATEST_MINUTES = 7 * 24 * 60;

    private static final int STEP_MINUTES = 15;
    /** Judgement: the walks of a bound need not be as fine as those of plans; what they lose lies in its safeties. */
    private static final double STRIDE_HOURS = 1;

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
    private final double[] warmestC;
    private final Wither[] withers;
    private final double[] greenLoads;
    private final double greenFraction;
    private final double wettestEndFraction;
    private final boolean greenPacks;
    private final double coldestC;
    /** By class (the last two are the wither's), coarse candidate and step of growth: what was worked out already; else NaN. */
    private final double[][][] knownMinutes;

    private final Outlook[] outlooks;

    /**
     * What can end a wither, by places after its start.
     *
     * @param loads turning, loading there and all after it at least, whatever has grown
     * @param grownRatio growth since the start at most, of a piece as moist as the floor keeps it and of the wettest
     */
    private record Wither(double[] loads, double[][] grownRatio) {}

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
        this.moistureClasses = moistureClasses(steep.acceptable());
        this.outlooks = new Outlook[space.grid().size()];
        this.warmestC = warmestC();
        this.greenLoads = new double[space.grid().size()];
        Arrays.fill(greenLoads, Double.NaN);
        this.withers = new Wither[space.grid().size()];
        this.greenFraction = greenFraction();
        this.wettestEndFraction = space.setup()
                .couching()
                .map(one -> one.schedule().packing().highFraction())
                .orElse(1.0);
        this.greenPacks = greenFraction <= wettestEndFraction;
        this.coldestC = coldestC();
        this.knownMinutes = new double[moistureClasses.length + 2][space.grid().coarseSize()][];
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
        double driest = row == 0 ? space.setup().style().steep().acceptable().lowFraction() : moistureClasses[row - 1];
        return space.rules().steepOutMoisture(Math.max(driest, Math.min(target, moistureClasses[row])));
    }

    private static double[] moistureClasses(FractionRange acceptable) {
        int count =
                (int) Math.max(1, Math.round((acceptable.highFraction() - acceptable.lowFraction()) / CLASS_FRACTION));
        double[] classes = new double[count];
        for (int i = 0; i < count; i++) {
            classes[i] =
                    acceptable.lowFraction() + (acceptable.highFraction() - acceptable.lowFraction()) * (i + 1) / count;
        }
        return classes;
    }

    /**
     * Cost-minutes still to come at least from casting.
     *
     * @param row class of its moisture
     * @param growthRatio growth at casting, or more
     */
    double fromFloor(int at, int row, double growthRatio) {
        int step = stepOf(growthRatio);
        if (!space.grid().coarse(at)) return Double.POSITIVE_INFINITY;
        if (step >= CAST_STEPS) return leastFromFloor(at, row, step * GROWTH_STEP_RATIO);
        double[] known = known(row, at, CAST_STEPS);
        if (Double.isNaN(known[step])) known[step] = leastFromFloor(at, row, step * GROWTH_STEP_RATIO);
        return known[step];
    }

    /** What is known of a class at a candidate, by steps of growth. */
    private double[] known(int row, int at, int steps) {
        int rank = space.grid().coarseRank(at);
        if (knownMinutes[row][rank] == null) {
            knownMinutes[row][rank] = new double[steps];
            Arrays.fill(knownMinutes[row][rank], Double.NaN);
        }
        return knownMinutes[row][rank];
    }

    private static int stepOf(double growthRatio) {
        return (int) Math.min(STEPS - 1, Math.ceil(growthRatio / GROWTH_STEP_RATIO - 1e-9));
    }

    private double leastFromFloor(int at, int row, double growthRatio) {
        if (!space.canBegin(space.stops().floor(), at)) return Double.POSITIVE_INFINITY;
        if (goal == space.stops().floor()) return 0;
        Outlook outlook = outlook(at);
        float[] grown = outlook.grownRatio()[row];
        double low = growth.acceptable().lowFraction();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < grown.length; i++) {
            double grownTo = growthRatio + grown[i] + SAFE_GROWTH_RATIO;
            if (grownTo < low - FloorLegs.WITHER_GROWTH_RATIO) continue;
            if (outlook.withers()[i] < least) {
                double wet = wetAs(row, outlook.wettestFraction()[i]);
                least = Math.min(least, outlook.withers()[i] + fromWither(outlook.ats()[i], grownTo, wet));
            }
            if (grownTo >= low && outlook.loads()[i] < least) {
                double far = Math.min(grownTo, growth.acrospireFraction());
                least = Math.min(least, outlook.loads()[i] + space.rules().growthAtTheEnd(far));
            }
        }
        return least;
    }

    /** Turnings from casting to a candidate and spreading to wither there; infinite if it cannot be. */
    private double toWither(int at, int to, double turning) {
        Stops stops = space.stops();
        boolean may = growth.wither().highHours() > 0 && goal >= stops.wither() && space.canBegin(stops.wither(), to);
        return may ? turning + space.stepCostMinutes(at, stops.wither(), to) : Double.POSITIVE_INFINITY;
    }

    /** Turnings from casting to a candidate, ending growth there and all after it at least; infinite if it cannot be. */
    private double toLoad(int at, int to, double turning) {
        int ends = space.stops().growthEnds();
        boolean may = greenPacks && space.canBegin(ends, to);
        return may ? turning + space.stepCostMinutes(at, ends, to) + greenLoad(to) : Double.POSITIVE_INFINITY;
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

    /** Cost-minutes still to come at least from spreading to wither a piece that has grown so far and is so moist. */
    double fromWither(int at, double growthRatio, double moistureFraction) {
        int wetness = moistureFraction <= growth.keepMoistureFraction() + CLASS_FRACTION ? 0 : 1;
        int step = stepOf(growthRatio);
        if (!space.grid().coarse(at)) return Double.POSITIVE_INFINITY;
        double[] known = known(moistureClasses.length + wetness, at, STEPS);
        if (Double.isNaN(known[step])) known[step] = leastFromWither(at, step * GROWTH_STEP_RATIO, wetness);
        return known[step];
    }

    private double leastFromWither(int at, double growthRatio, int wetness) {
        Wither wither = wither(at);
        double[] loads = wither.loads();
        double[] grown = wither.grownRatio()[wetness];
        double low = growth.acceptable().lowFraction();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < loads.length; i++) {
            if (loads[i] >= least) continue;
            double grownTo = growthRatio + SAFE_GROWTH_RATIO + grown[i];
            if (grownTo < low) continue;
            double grows = space.rules().growthAtTheEnd(Math.min(grownTo, growth.acrospireFraction()));
            least = Math.min(least, loads[i] + grows);
        }
        return least;
    }

    private Wither wither(int at) {
        if (withers[at] == null) withers[at] = walkWither(at);
        return withers[at];
    }

    private Wither walkWither(int at) {
        TimeGrid grid = space.grid();
        int ends = space.stops().growthEnds();
        int start = grid.minute(at);
        double longest = space.rules().longestWitherHours();
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * longest) + 1));
        double[] loads = new double[Math.max(1, end - at)];
        Arrays.fill(loads, Double.POSITIVE_INFINITY);
        double[][] grown = new double[2][loads.length];
        if (!space.canBegin(space.stops().wither(), at)) return new Wither(loads, grown);
        BedWalk[] walks = {
            witherBed(at, growth.keepMoistureFraction() + CLASS_FRACTION, 1),
            witherBed(at, moistureClasses[moistureClasses.length - 1], 1),
            witherBed(at, greenFraction, 0)
        };
        int first = grid.firstAtOrAfter(start + (int) (60 * Rules.WITHER_SHORTEST_HOURS));
        for (int to = grid.nextCoarse(first); to < end; to = grid.nextCoarse(to + 1)) {
            if (!space.canBegin(ends, to)) continue;
            for (BedWalk walk : walks) walk.to(grid.minute(to));
            for (int wetness = 0; wetness < 2; wetness++) {
                grown[wetness][to - at] = walks[wetness].growthRatio() - 1;
            }
            double driest = walks[2].moistureFraction() - SAFE_DRYING_FRACTION;
            if (driest > wettestEndFraction) continue;
            loads[to - at] = beds.withering().costMinutes(at, to)
                    + space.stepCostMinutes(at, ends, to)
                    + after.fromTheEnd(to, Math.max(space.rules().driestFraction(), driest));
        }
        return new Wither(loads, grown);
    }

    /** A withering bed of that moisture: the liveliest and warmest when grown, the idlest and lightest when not. */
    private BedWalk witherBed(int at, double moistureFraction, double growthRatio) {
        double ratio = KilnHeat.ratioOf(moistureFraction);
        boolean grows = growthRatio > 0;
        double dry = grows ? 1 : LEAST_DRY_FRACTION;
        double bedC = grows ? warmestC[space.grid().minute(at) / STEP_MINUTES + 1] : coldestC;
        Grain grain = new Grain(ratio * dry, ratio * dry, ratio * dry, 0, grows ? 2 : 0, growthRatio, dry, bedC);
        return new BedWalk(beds.wither(), grain, space.grid().minute(at), STRIDE_HOURS);
    }

    /** Temperature of the warmest growing bed, by quarters of an hour since the origin. */
    private double[] warmestC() {
        TimeGrid grid = space.grid();
        int last = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1);
        double[] warmC = new double[last / STEP_MINUTES + 2];
        double wettest = moistureClasses[moistureClasses.length - 1];
        double nowC = -50;
        for (int i = 0; i < warmC.length; i++) {
            double airC = space.setup().air().floor().airC((i - 0.5) * STEP_MINUTES / 60);
            double steadyC =
                    warmestSteadyC(space.setup(), space.setup().outfit().growing(), airC, wettest);
            nowC = Math.max(steadyC, steadyC + (nowC - steadyC) * COOLING_RATIO);
            warmC[i] = nowC;
        }
        return warmC;
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

    /** Judgement: growth is rounded up to whole steps of this; never down, so the bound stays one. */
    private static final double GROWTH_STEP_RATIO = 0.01;

    private static final int STEPS = 140;
    private static final int CAST_STEPS = stepOf(Rules.CAST_GROWTH_RATIO) + 1;
    /** Judgement: dry matter left at the end of growth, share of what was steeped, at least. */
    private static final double LEAST_DRY_FRACTION = 0.85;

    private double coldestC() {
        double coldest = 50;
        for (int at = 0; at < space.grid().size(); at++) {
            double hours = space.grid().minute(at) / 60.0;
            coldest = Math.min(coldest, space.setup().air().floor().airC(hours));
        }
        return coldest;
    }

    /** How moist a piece of a class is at most, when the wettest one has come to this moisture: none is let get drier. */
    private double wetAs(int row, double wettestNowFraction) {
        double behind = moistureClasses[moistureClasses.length - 1] - moistureClasses[row];
        return Math.max(growth.keepMoistureFraction(), wettestNowFraction - behind + SAFE_DRYING_FRACTION);
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
        double warmC = warmestCastC(grid.minute(at) / 60.0);
        Grain fullest = new Grain(ratio, ratio, ratio, 0, 2, Rules.CAST_GROWTH_RATIO, 1, warmC);
        BedWalk walk = new BedWalk(beds.floor(), fullest, grid.minute(at), STRIDE_HOURS);
        int end = grid.firstAtOrAfter(grid.minute(at) + FloorLegs.LONGEST_GROWTH_MINUTES + 1);
        Outlook.Gathered exits = new Outlook.Gathered(moistureClasses.length, end - at);
        double[] grown = new double[moistureClasses.length];
        int latest = Integer.MAX_VALUE;
        for (int to = grid.nextCoarse(at + 1); to < end && grid.minute(to) < latest; to = grid.nextCoarse(to + 1)) {
            double before = walk.growthRatio();
            if (grown[0] < growth.acrospireFraction()) walk.to(grid.minute(to));
            double grew = walk.growthRatio();
            double wet = walk.moistureFraction();
            if (grew > before) grow(grown, grew - before, wet);
            double turning = beds.growing().costMinutes(at, to);
            if (turning < Double.POSITIVE_INFINITY) {
                exits.add(to, toWither(at, to, turning), toLoad(at, to, turning), wet, grown);
            }
            if (grew >= growth.acrospireFraction() && latest == Integer.MAX_VALUE)
                latest = grid.minute(to) + LATEST_MINUTES;
        }
        return exits.outlook();
    }

    private void grow(double[] grown, double mostRatio, double wettestNowFraction) {
        for (int row = 0; row < grown.length; row++) grown[row] += mostRatio * slower(row, wettestNowFraction);
    }

    /** No piece is cast warmer, °C. */
    private double warmestCastC(double atHours) {
        Setup setup = space.setup();
        double steepedC = Math.max(setup.fillC(), setup.air().steep().airC(atHours) + 6);
        if (!space.heapHelps()) return steepedC;
        double airC = setup.air().floor().airC(atHours);
        double heapedC = setup.heaping().orElseThrow().warmestMeanC();
        return Math.max(steepedC, airC + FloorActs.WARMTH_LEFT_RATIO * Math.max(0, heapedC - airC));
    }

    /** Growth of a drier class as a share of the wettest one's, which has come to this moisture. */
    private double slower(int row, double wettestNowFraction) {
        return Metabolism.growthMoistureRatio(wetAs(row, wettestNowFraction))
                / Metabolism.growthMoistureRatio(wettestNowFraction);
    }
}
