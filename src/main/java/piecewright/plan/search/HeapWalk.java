package piecewright.plan.search;

import piecewright.plan.Heaping;
import piecewright.plan.Setup;
import piecewright.process.Metabolism;
import piecewright.process.germination.Bed;

/** A wet couch walked forward: scratch space of the search, mutable, used by one thread. */
final class HeapWalk {
    private static final int MEAN_C = 0;
    private static final int CHIT = 1;
    private static final int GROWTH = 2;
    private static final int DRY = 3;
    private static final int WATER = 4;
    private static final int WARMEST_C = 5;
    private static final int DEGREE_HOURS = 6;

    private final Strides walk;
    private final Metabolism metabolism;
    private final Heaping heaping;
    private final double initialKg;
    private final Grain start;

    HeapWalk(Setup setup, Grain start, double atMinute) {
        this.walk = new Strides(
                this::step,
                Strides.USUAL_HOURS,
                atMinute,
                start.grainC(),
                start.chitRatio(),
                start.growthRatio(),
                start.dryFraction(),
                start.waterRatio(),
                start.grainC(),
                0);
        this.metabolism = setup.models().metabolism();
        this.heaping = setup.heaping().orElseThrow();
        this.initialKg = setup.dryMatterKg();
        this.start = start;
    }

    /** What little water leaves under its cloth is left out. */
    private void step(double[] values, double middleHours) {
        double dry = values[DRY];
        double water = values[WATER];
        double moisture = water / (water + dry);
        double heatW = metabolism.heatWPerKgDry(values[MEAN_C], moisture, values[GROWTH]);
        double dryKg = initialKg * dry;
        double steadyC = heaping.air().airC(middleHours) + heaping.heap().steadyRiseK(heatW, dryKg);
        double perHour = -Bed.warmingKPerHour(0, heaping.heap().lossWPerK(), dryKg, initialKg * water);
        double nextC = steadyC + (values[MEAN_C] - steadyC) * Math.exp(-perHour * Strides.USUAL_HOURS);
        double halfC = (values[MEAN_C] + nextC) / 2;
        if (values[CHIT] >= 1) values[GROWTH] += metabolism.growthPerHour(halfC, moisture) * Strides.USUAL_HOURS;
        values[CHIT] += metabolism.chitPerHour(halfC) * Strides.USUAL_HOURS;
        double respired = dry * Metabolism.respiredPerHour(heatW) * Strides.USUAL_HOURS;
        values[DRY] = dry - respired;
        values[WATER] = water + Metabolism.WATER_FORMED_RATIO * respired;
        values[DEGREE_HOURS] += halfC * Strides.USUAL_HOURS;
        values[MEAN_C] = nextC;
        values[WARMEST_C] = Math.max(values[WARMEST_C], nextC);
    }

    void to(double untilMinutes) {
        walk.to(untilMinutes);
    }

    double hours() {
        return walk.hours();
    }

    /** Mean temperature since it was heaped, °C. */
    double meanSinceC() {
        return walk.hours() > 0 ? walk.value(DEGREE_HOURS) / walk.hours() : walk.value(MEAN_C);
    }

    double warmestC() {
        return walk.value(WARMEST_C);
    }

    /** The grain now. */
    Grain grain() {
        double water = walk.value(WATER);
        return new Grain(
                water,
                start.coreRatio(),
                water,
                start.soakHours(),
                walk.value(CHIT),
                walk.value(GROWTH),
                walk.value(DRY),
                walk.value(MEAN_C));
    }
}
