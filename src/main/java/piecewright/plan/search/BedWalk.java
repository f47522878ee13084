package piecewright.plan.search;

import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.germination.Bed;

/**
 * A bed on the floor or withering, walked forward: scratch space of the search, mutable, used by one thread. Turnings
 * are smeared out (the mean temperature they leave), sprinkling holds the moisture the style keeps.
 */
final class BedWalk {
    private static final int WATER = 0;
    private static final int GRAIN_C = 1;
    private static final int CHIT = 2;
    private static final int GROWTH = 3;
    private static final int DRY = 4;
    private static final int DEGREE_HOURS = 5;
    /** Judgement: depth and weight of a bed change so slowly that it is weighed every so many strides. */
    private static final int STEPS_PER_WEIGHING = 4;

    private final Strides walk;
    private final double strideHours;
    private final BedRates rates;
    private final Metabolism metabolism;
    private final Bed bed;
    private final BedRates.Lying lying;
    private final double keepRatio;
    private final Grain start;
    private int steps;
    private double steadyKPerW;
    private double keptRatio;
    private double laidM;

    BedWalk(BedRates rates, Grain start, double atMinute) {
        this(rates, start, atMinute, Strides.USUAL_HOURS);
    }

    /** @param strideHours how fine to walk */
    BedWalk(BedRates rates, Grain start, double atMinute, double strideHours) {
        this.strideHours = strideHours;
        this.walk = new Strides(
                this::step,
                strideHours,
                atMinute,
                start.waterRatio(),
                start.grainC(),
                start.chitRatio(),
                start.growthRatio(),
                start.dryFraction(),
                0);
        this.rates = rates;
        this.metabolism = rates.metabolism();
        this.bed = rates.bed();
        this.lying = rates.lying();
        this.keepRatio = KilnHeat.ratioOf(lying.keepMoistureFraction());
        this.start = start;
    }

    private void step(double[] values, double middleHours) {
        if (steps++ % STEPS_PER_WEIGHING == 0) weigh(values[WATER], values[DRY]);
        double airC = lying.air().airC(middleHours);
        double dry = values[DRY];
        double water = values[WATER];
        double moisture = water / (water + dry);
        double heatW = rates.heatWPerKg(values[GRAIN_C], moisture, values[GROWTH]);
        double steadyC = airC + steadyKPerW * heatW;
        double nextC = steadyC + (values[GRAIN_C] - steadyC) * keptRatio;
        double meanC = (values[GRAIN_C] + nextC) / 2;
        double respired = dry * Metabolism.respiredPerHour(heatW) * strideHours;
        double lost = dry
                * strideHours
                * bed.waterLossPerHour(water / dry, rates.deficitKPa(airC), laidM, lying.exposureRatio());
        double kept = Math.min(water, keepRatio * (dry - respired));
        values[WATER] = Math.max(kept, water - lost + Metabolism.WATER_FORMED_RATIO * respired);
        values[DRY] = dry - respired;
        if (values[CHIT] >= 1) values[GROWTH] += metabolism.growthPerHour(meanC, moisture) * strideHours;
        values[CHIT] += metabolism.chitPerHour(meanC) * strideHours;
        values[GRAIN_C] = nextC;
        values[DEGREE_HOURS] += meanC * strideHours;
    }

    /** What hangs on depth and weight; turnings smeared out over their usual gap. */
    private void weigh(double waterRatio, double dryFraction) {
        double kg = rates.dryMatterKg();
        GrainMass mass = new GrainMass(kg, kg * dryFraction, kg * waterRatio);
        double depthM = bed.depthM(mass, lying.areaM2());
        double dryKgPerM2 = mass.dryMatterKg() / lying.areaM2();
        double tauHours = -1 / bed.warmingKPerHour(0, 1, depthM, dryKgPerM2, mass.dryBasisRatio());
        double turned = 1 - 0.5 * tauHours / lying.turnHours() * (1 - Math.exp(-lying.turnHours() / tauHours));
        steadyKPerW = turned * bed.steadyRiseK(1, depthM, dryKgPerM2);
        keptRatio = Math.exp(-strideHours / tauHours);
        laidM = bed.laidDepthM(mass, lying.areaM2());
    }

    void to(double untilMinutes) {
        walk.to(untilMinutes);
    }

    double hours() {
        return walk.hours();
    }

    double meanC() {
        return walk.hours() > 0 ? walk.value(DEGREE_HOURS) / walk.hours() : start.grainC();
    }

    double growthRatio() {
        return walk.value(GROWTH);
    }

    double moistureFraction() {
        double water = walk.value(WATER);
        return water / (water + walk.value(DRY));
    }

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
                walk.value(GRAIN_C));
    }
}
