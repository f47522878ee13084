package piecewright.process.germination;

/**
 * What may be moved about a bed of green malt.
 *
 * @param bulkKgPerM3 wet weight of a loose bed, kg/m³, above 0
 * @param surfaceWPerM2K loss from the surface to the air, evaporation included, W/m²K, above 0
 * @param bedWPerMK conductance of the bed from its middle, W/mK, above 0
 * @param witherPerHourKPa kw, drying rate of a still 2.5 cm layer per hour and kPa of vapour pressure deficit, 0 or more
 * @param restWaterRatio We, dry-basis moisture at which a bed in still air stops drying, 0 or more
 * @param clothRatio drying under a damp cloth as a share of still, open air, 0 or more
 * @param uncoveredRatio drying of an uncovered bed as a share of a thin withering layer of that depth, 0 or more
 */
public record GrowthParameters(
        double bulkKgPerM3,
        double surfaceWPerM2K,
        double bedWPerMK,
        double witherPerHourKPa,
        double restWaterRatio,
        double clothRatio,
        double uncoveredRatio) {
    /** Judgement: loose green malt; practice estimate. */
    public static final double BULK_KG_PER_M3 = 480;
    /** Judgement: still air over a wet surface, evaporation included. */
    public static final double SURFACE_W_PER_M2_K = 20;
    /** Judgement: so that rises of 2, 5 and more than 15 K come out at 5, 10 and 20 cm. */
    public static final double BED_W_PER_M_K = 1.2;
    /** Judgement: fitted to 46 to 27.5 % in 28 h at 23 °C and an assumed 55 % humidity (common practice). */
    public static final double WITHER_PER_HOUR_K_PA = 0.0301;
    /** Judgement: a little above equilibrium moisture of grain in damp air. */
    public static final double REST_WATER_RATIO = 0.13;
    /** Judgement: beds under cloth lose about half a point a day. */
    public static final double CLOTH_RATIO = 0.12;
    /** Judgement: thin open beds lose 0.5 to 1.5 points a day in a humid room. */
    public static final double UNCOVERED_RATIO = 0.35;

    public GrowthParameters {
        if (!(bulkKgPerM3 > 0 && surfaceWPerM2K > 0 && bedWPerMK > 0)) {
            throw new IllegalArgumentException("density and conductances must be above 0: " + bulkKgPerM3 + ", "
                    + surfaceWPerM2K + ", " + bedWPerMK);
        }
        if (!(witherPerHourKPa >= 0 && restWaterRatio >= 0 && clothRatio >= 0 && uncoveredRatio >= 0)) {
            throw new IllegalArgumentException("drying figures must be 0 or more: " + witherPerHourKPa + ", "
                    + restWaterRatio + ", " + clothRatio + ", " + uncoveredRatio);
        }
    }

    public static GrowthParameters defaults() {
        return new GrowthParameters(
                BULK_KG_PER_M3,
                SURFACE_W_PER_M2_K,
                BED_W_PER_M_K,
                WITHER_PER_HOUR_K_PA,
                REST_WATER_RATIO,
                CLOTH_RATIO,
                UNCOVERED_RATIO);
    }

    /** The same for grain that lies so much denser than barley, above 0. */
    public GrowthParameters withBulkRatio(double denserRatio) {
        return new GrowthParameters(
                bulkKgPerM3 * denserRatio,
                surfaceWPerM2K,
                bedWPerMK,
                witherPerHourKPa,
                restWaterRatio,
                clothRatio,
                uncoveredRatio);
    }

    public GrowthParameters withWitherPerHourKPa(double changedPerHourKPa) {
        return new GrowthParameters(
                bulkKgPerM3, surfaceWPerM2K, bedWPerMK, changedPerHourKPa, restWaterRatio, clothRatio, uncoveredRatio);
    }

    /** The share of the still-air drying law that a cover lets through. */
    public double exposureRatio(Cover cover) {
        return switch (cover) {
            case DAMP_CLOTH -> clothRatio;
            case UNCOVERED -> uncoveredRatio;
        };
    }
}
