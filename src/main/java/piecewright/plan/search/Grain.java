package piecewright.plan.search;

/**
 * What the rest of the plan can feel of the grain: the state of a label. Ratios are kg per kg of initial dry matter.
 *
 * @param waterRatio all water that the scale sees
 * @param coreRatio water in the core, in the steep
 * @param slowWaterRatio in the kiln: water if the kiln is among the slowest tenth; before it, the same as waterRatio
 * @param soakHours hours under water so far, as if at 15 °C
 * @param chitRatio χ
 * @param growthRatio P
 * @param dryFraction dry matter still there, share of the initial
 * @param grainC temperature, °C
 */
record Grain(
        double waterRatio,
        double coreRatio,
        double slowWaterRatio,
        double soakHours,
        double chitRatio,
        double growthRatio,
        double dryFraction,
        double grainC) {
    /** The same grain after a stretch of drying. */
    Grain dried(double driedRatio, double slowDriedRatio) {
        return new Grain(
                driedRatio, driedRatio, slowDriedRatio, soakHours, chitRatio, growthRatio, dryFraction, grainC);
    }

    /** The same grain with that growth. */
    Grain grownTo(double changedRatio) {
        return new Grain(
                waterRatio, coreRatio, slowWaterRatio, soakHours, chitRatio, changedRatio, dryFraction, grainC);
    }

    /** The same grain at that temperature. */
    Grain at(double changedC) {
        return new Grain(
                waterRatio, coreRatio, slowWaterRatio, soakHours, chitRatio, growthRatio, dryFraction, changedC);
    }

    /** Drained moisture, wet basis. */
    double moistureFraction() {
        return waterRatio / (waterRatio + dryFraction);
    }

    /** Moisture that nine kilns in ten will be at or below, wet basis. */
    double slowMoistureFraction() {
        return slowWaterRatio / (slowWaterRatio + dryFraction);
    }
}
