package piecewright.plan.search;

import java.util.Arrays;
import piecewright.plan.Heaping;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;
import piecewright.process.steep.Standing;
import piecewright.process.steep.Wetting;

/** How soon a piece can be ripe or grown: as if it warmed as fast and cooled as slowly as it ever may. */
final class ChitClock {
    private static final int STEP_MINUTES = 15;
    /** Judgement: covers the half-hour steps of the walks. */
    private static final double SAFE_K = 0.1;
    /** Judgement: dry matter left at casting, share of what was steeped, at least. */
    private static final double LEAST_DRY_FRACTION = 0.9;
    /** Judgement: what breath may change in the moisture of a heap, wet basis. */
    private static final double SAFE_FRACTION = 0.01;
    /** Judgement: no steep-out is wetter. */
    private static final double WETTEST_FRACTION = 0.49;

    private final TimeGrid grid;
    private final double ripeChitRatio;
    private final double[] chit;
    private final double[] growth;
    private final double[] warmestC;
    private final double[] heapedChit;
    private final double coldestC;

    ChitClock(Space space, double ripeChitRatio, double rawC) {
        this.grid = space.grid();
        this.ripeChitRatio = ripeChitRatio;
        int last = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1);
        this.chit = new double[last / STEP_MINUTES + 2];
        this.growth = new double[chit.length];
        this.warmestC = new double[chit.length];
        double fillC = space.setup().fillC();
        this.coldestC = tabulate(space, Math.max(fillC, rawC), Math.min(fillC, rawC)) - 1;
        this.heapedChit = new double[space.heapHelps() ? chit.length : 0];
        if (space.heapHelps()) tabulateHeap(space);
    }

    /** The same of a piece that may be heaped at any time: a heap never broken, warm from the start. */
    private void tabulateHeap(Space space) {
        Setup setup = space.setup();
        Heaping heaping = setup.heaping().orElseThrow();
        Metabolism metabolism = setup.models().metabolism();
        double kg = setup.dryMatterKg();
        double loss = heaping.heap().lossWPerK();
        double driest = KilnHeat.ratioOf(setup.style().steep().acceptable().lowFraction() - SAFE_FRACTION);
        double stepHours = STEP_MINUTES / 60.0;
        double light = -Bed.warmingKPerHour(0, loss, kg * LEAST_DRY_FRACTION, kg * LEAST_DRY_FRACTION * driest);
        double heavy = -Bed.warmingKPerHour(0, loss, kg, kg * KilnHeat.ratioOf(WETTEST_FRACTION));
        double heapC = warmestC[0];
        for (int i = 1; i < heapedChit.length; i++) {
            double beforeC = heapC;
            double airC =
                    Math.max(heaping.air().airC(i * stepHours), heaping.air().airC((i - 1) * stepHours));
            double heatW = metabolism.heatWPerKgDry(heapC + SAFE_K, WETTEST_FRACTION, Rules.CAST_GROWTH_RATIO);
            double gainC = airC + SAFE_K + heaping.heap().steadyRiseK(heatW, kg) - heapC;
            heapC += gainC * (1 - Math.exp(-stepHours * (gainC > 0 ? light : heavy)));
            heapC = Math.min(heaping.warmestMeanC() + SAFE_K, Math.max(heapC, warmestC[i]));
            double warmC = Math.max(heapC, beforeC) + SAFE_K;
            double fastest = Math.max(metabolism.chitPerHour(warmC) * stepHours, chit[i] - chit[i - 1]);
            heapedChit[i] = heapedChit[i - 1] + fastest;
        }
    }

    /** The warmest a piece in the vessel can be: it warms as quickly and cools as slowly as any filling allows. */
    private double tabulate(Space space, double leastC, double mostC) {
        Metabolism metabolism = space.setup().models().metabolism();
        Surroundings air = space.setup().air().steep();
        double[] relaxHours = relaxHours(space);
        double stepHours = STEP_MINUTES / 60.0;
        double warming = 1 - Math.exp(-stepHours / relaxHours[0]);
        double cooling = 1 - Math.exp(-stepHours / relaxHours[1]);
        double coldest = mostC;
        warmestC[0] = Math.max(leastC, air.airC(0));
        for (int i = 1; i < chit.length; i++) {
            double nowC = air.airC(i * stepHours);
            coldest = Math.min(coldest, nowC);
            double towardsC = Math.max(nowC, air.airC((i - 1) * stepHours)) + SAFE_K;
            double gainC = towardsC - warmestC[i - 1];
            warmestC[i] = Math.max(leastC, warmestC[i - 1] + gainC * (gainC > 0 ? warming : cooling));
            double warmC = Math.max(warmestC[i], warmestC[i - 1]) + SAFE_K;
            chit[i] = chit[i - 1] + metabolism.chitPerHour(warmC) * stepHours;
            growth[i] = growth[i - 1] + metabolism.growthPerHour(warmC, WETTEST_FRACTION) * stepHours;
        }
        return coldest;
    }

    /** Shortest and longest time constant towards the air of any filling of the vessel, hours. */
    private static double[] relaxHours(Space space) {
        Setup setup = space.setup();
        var warming = setup.models().steep().parameters().warming();
        double kg = setup.dryMatterKg();
        double leastL = Wetting.grainL(
                new GrainMass(kg, kg * LEAST_DRY_FRACTION, kg * setup.lot().moistureRatio()));
        double mostL = Wetting.grainL(new GrainMass(kg, kg, kg * KilnHeat.ratioOf(WETTEST_FRACTION)));
        double shortest = warming.hours(setup.restStanding(), leastL);
        double longest = warming.hours(setup.restStanding(), mostL);
        for (int immersion = 1; immersion <= space.stops().immersions(); immersion++) {
            double waterL = setup.outfit().soaking().waterL(immersion);
            shortest = Math.min(shortest, warming.hours(Standing.BUCKET, waterL + leastL));
            longest = Math.max(longest, warming.hours(Standing.BUCKET, waterL + mostL));
        }
        return new double[] {shortest, longest};
    }

    /** No steeping grain is warmer at this candidate, °C. */
    double warmestC(int at) {
        return warmestC[Math.min(warmestC.length - 1, grid.minute(at) / STEP_MINUTES + 1)] + SAFE_K;
    }

    /** No steeping grain is ever colder, °C; slips cost less the colder it is. */
    double coldestC() {
        return coldestC;
    }

    /** First candidate at which this piece could be ripe to cast. */
    int earliestRipe(Label label) {
        return grid.firstAtOrAfter(minuteOf(label, ripeChitRatio, chit));
    }

    /** The same of a piece that may go into a wet couch. */
    int earliestRipeHeaped(Label label) {
        return grid.firstAtOrAfter(minuteOf(label, ripeChitRatio, heapedChit));
    }

    /** How much a piece still in the vessel may have grown. */
    final class Growth {
        private final int fromStep;
        private final double lessRatio;

        private Growth(Label label) {
            fromStep = Math.min(growth.length - 1, minuteOf(label, 1, chit) / STEP_MINUTES);
            lessRatio = growth[fromStep] - label.grain().growthRatio();
        }

        /** By a candidate, at most. */
        double by(int at) {
            int step = Math.min(growth.length - 1, grid.minute(at) / STEP_MINUTES + 1);
            return growth[Math.max(fromStep, step)] - lessRatio;
        }

        /** First candidate at which it could have grown more than that. */
        int atMost(double growthRatio) {
            int found = Arrays.binarySearch(growth, fromStep, growth.length, lessRatio + growthRatio);
            int step = found >= 0 ? found : -found - 2;
            return grid.firstAtOrAfter(Math.max(fromStep, step) * STEP_MINUTES);
        }
    }

    Growth growthOf(Label label) {
        return new Growth(label);
    }

    private int minuteOf(Label label, double chitRatio, double[] sum) {
        int minute = grid.minute(label.at());
        double missing = chitRatio - label.grain().chitRatio();
        if (missing <= 0) return minute;
        int from = minute / STEP_MINUTES;
        int found = Arrays.binarySearch(sum, from, sum.length, sum[from] + missing);
        int step = found >= 0 ? found : Math.min(-found - 1, sum.length - 1);
        return Math.max(minute, (step - 1) * STEP_MINUTES);
    }
}
