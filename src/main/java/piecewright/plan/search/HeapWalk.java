package piecewright.plan.search;

import piecewright.plan.Heaping;
import piecewright.plan.Setup;
import piecewright.process.Metabolism;
import piecewright.process.germination.Bed;

/** A wet couch walked forward in half hours: scratch space of the search, mutable, used by one thread. */
final class HeapWalk {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    private static final double STEP_MINUTES = 30;

    private final Metabolism metabolism;
    private final Heaping heaping;
    private final double initialKg;
    private final Grain start;
    private double nowMinutes;
    private double meanC;
    private double chitRatio;
    private double growthRatio;
    private double dryFraction;
    private double waterRatio;
    private double warmestC;
    private double hours;
    private double degreeHours;

    HeapWalk(Setup setup, Grain start, double atMinute) {
        this.metabolism = setup.models().metabolism();
        this.heaping = setup.heaping().orElseThrow();
        this.initialKg = setup.dryMatterKg();
        this.start = start;
        this.nowMinutes = atMinute;
        this.meanC = start.grainC();
        this.warmestC = start.grainC();
        this.chitRatio = start.chitRatio();
        this.growthRatio = start.growthRatio();
        this.dryFraction = start.dryFraction();
        this.waterRatio = start.waterRatio();
    }

    void to(double untilMinute) {
        while (untilMinute - nowMinutes > 1e-6) {
            double stepMinutes = Math.min(STEP_MINUTES, untilMinute - nowMinutes);
            step(stepMinutes / 60);
            nowMinutes += stepMinutes;
        }
    }

    /** What little water leaves under its cloth is left out. */
    private void step(double stepHours) {
        double moisture = waterRatio / (waterRatio + dryFraction);
        double airC = heaping.air().airC((nowMinutes + stepHours * 30) / 60);
        double heatW = metabolism.heatWPerKgDry(meanC, moisture, growthRatio);
        double nextC = warmed(heaping, airC, heatW, stepHours);
        double halfC = (meanC + nextC) / 2;
        if (chitRatio >= 1) growthRatio += metabolism.growthPerHour(halfC, moisture) * stepHours;
        chitRatio += metabolism.chitPerHour(halfC) * stepHours;
        double respired = dryFraction * Metabolism.respiredPerHour(heatW) * stepHours;
        dryFraction -= respired;
        waterRatio += Metabolism.WATER_FORMED_RATIO * respired;
        degreeHours += halfC * stepHours;
        hours += stepHours;
        meanC = nextC;
        warmestC = Math.max(warmestC, nextC);
    }

    private double warmed(Heaping heap, double airC, double heatWPerKg, double stepHours) {
        double dryKg = initialKg * dryFraction;
        double lossWPerK = heap.heap().lossWPerK();
        double steadyC = airC + heap.heap().steadyRiseK(heatWPerKg, dryKg);
        double perHour = -Bed.warmingKPerHour(0, lossWPerK, dryKg, initialKg * waterRatio);
        return steadyC + (meanC - steadyC) * Math.exp(-perHour * stepHours);
    }

    double hours() {
        return hours;
    }

    /** Mean temperature since it was heaped, °C. */
    double meanSinceC() {
        return hours > 0 ? degreeHours / hours : meanC;
    }

    double warmestC() {
        return warmestC;
    }

    /** The grain now. */
    Grain grain() {
        return new Grain(
                waterRatio,
                start.coreRatio(),
                waterRatio,
                start.soakHours(),
                chitRatio,
                growthRatio,
                dryFraction,
                meanC);
    }
}
