package piecewright.process.germination;

import java.util.Objects;
import piecewright.process.GrainMass;

/** The equations of a level bed of green malt in quiet air: depth, warming, loss of water. */
public final class Bed {
    /** Judgement: heat capacity of dry grain, kJ/kgK. */
    private static final double DRY_KJ_PER_KG_K = 1.30;
    /** Source: heat capacity of liquid water near 15 °C, kJ/kgK. */
    private static final double WATER_KJ_PER_KG_K = 4.19;
    /** Judgement: depth of the layer that the withering rate was fitted to, m. */
    private static final double WITHER_DEPTH_M = 0.025;
    /** Judgement: moisture of that layer when it was laid; a layer dries by its dry matter per area, shrunken or not. */
    private static final double LAID_MOISTURE_FRACTION = 0.46;

    private final GrowthParameters parameters;

    public Bed(GrowthParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    public GrowthParameters parameters() {
        return parameters;
    }

    /** Depth of a piece spread on an area above 0, m. */
    public double depthM(GrainMass mass, double areaM2) {
        return mass.totalKg() / (parameters.bulkKgPerM3() * areaM2);
    }

    /** Area a piece needs to lie that deep, m². */
    public double areaM2(GrainMass mass, double depthM) {
        return mass.totalKg() / (parameters.bulkKgPerM3() * depthM);
    }

    /** Depth that counts for drying, m: as deep as the dry matter lay when freshly spread at 46 % moisture. */
    public double laidDepthM(GrainMass mass, double areaM2) {
        return mass.dryMatterKg() / ((1 - LAID_MOISTURE_FRACTION) * parameters.bulkKgPerM3() * areaM2);
    }

    /** U: heat lost to the air per area and kelvin, evaporation included, W/m²K. */
    public double lossWPerM2K(double depthM) {
        return 1 / (1 / parameters.surfaceWPerM2K() + depthM / parameters.bedWPerMK());
    }

    /**
     * Warming of a bed, K/h.
     *
     * @param heatWPerKg heat of respiration, W per kg of dry matter
     * @param riseK grain over air, K
     * @param depthM depth, above 0
     * @param dryKgPerM2 dry matter per area, above 0
     * @param dryBasisRatio kg of water per kg of dry matter
     */
    public double warmingKPerHour(
            double heatWPerKg, double riseK, double depthM, double dryKgPerM2, double dryBasisRatio) {
        double capacityKJPerM2K = dryKgPerM2 * (DRY_KJ_PER_KG_K + WATER_KJ_PER_KG_K * dryBasisRatio);
        return 3.6 * (heatWPerKg * dryKgPerM2 - lossWPerM2K(depthM) * riseK) / capacityKJPerM2K;
    }

    /** Warming of grain that makes so much heat and loses so much, W, K/h. */
    public static double warmingKPerHour(double madeW, double lostW, double dryKg, double waterKg) {
        return 3.6 * (madeW - lostW) / (DRY_KJ_PER_KG_K * dryKg + WATER_KJ_PER_KG_K * waterKg);
    }

    /** Rise over the air at which a bed stays, K. */
    public double steadyRiseK(double heatWPerKg, double depthM, double dryKgPerM2) {
        return heatWPerKg * dryKgPerM2 / lossWPerM2K(depthM);
    }

    /**
     * Water lost to the air, kg per kg of dry matter and hour.
     *
     * @param deficitKPa vapour pressure deficit of the air, kPa, 0 or more
     * @param laidDepthM depth as freshly spread, above 0
     * @param exposureRatio 1 in the open, less under a cover
     */
    public double waterLossPerHour(double dryBasisRatio, double deficitKPa, double laidDepthM, double exposureRatio) {
        return dryingPerHour(deficitKPa, laidDepthM, exposureRatio)
                * Math.max(0, dryBasisRatio - parameters.restWaterRatio());
    }

    /** Hours of withering in the open from one dry-basis moisture to a lower one; infinite at or below We. */
    public double witherHours(double fromRatio, double untilRatio, double deficitKPa, double laidDepthM) {
        if (untilRatio <= parameters.restWaterRatio()) return Double.POSITIVE_INFINITY;
        return Math.log((fromRatio - parameters.restWaterRatio()) / (untilRatio - parameters.restWaterRatio()))
                / dryingPerHour(deficitKPa, laidDepthM, 1);
    }

    private double dryingPerHour(double deficitKPa, double laidDepthM, double exposureRatio) {
        return exposureRatio * parameters.witherPerHourKPa() * deficitKPa * WITHER_DEPTH_M / laidDepthM;
    }
}
