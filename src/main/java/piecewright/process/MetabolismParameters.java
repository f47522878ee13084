package piecewright.process;

/**
 * What may be moved about living grain.
 *
 * @param chitSumKelvinHours warmth above −1.5 °C, K·h, from first wetting until half the corns have chitted, above 0
 * @param chitSpreadRatio spread of the time to chit among corns, standard deviation of its logarithm, above 0
 * @param growthSumKelvinDays warmth above 2 °C, K·d, from chit to full modification at 44 % moisture, above 0
 * @param heatAt20WPerKg heat of germinating dry matter at 20 °C, 44 % and full activity, W/kg, 0 or more
 * @param heatQ10Ratio factor on that heat per 10 K, above 0
 * @param steepShareRatio respiration in the steep as a share of the floor's at full activity, 0 or more
 * @param rootletQ10Ratio factor on the rootlet clock per 10 K, above 0
 */
public record MetabolismParameters(
        double chitSumKelvinHours,
        double chitSpreadRatio,
        double growthSumKelvinDays,
        double heatAt20WPerKg,
        double heatQ10Ratio,
        double steepShareRatio,
        double rootletQ10Ratio) {
    /** Judgement: 36 h at 15 °C; shape after the barley germination data of Onofri et al. 2018, level from practice. */
    public static final double CHIT_SUM_KELVIN_HOURS = 594;
    /** Judgement: as uneven as growth in a normal lot. */
    public static final double CHIT_SPREAD_RATIO = 0.20;
    /** Judgement: fits the usual days of germination at 12 to 24 °C; remembered and second-hand anchors. */
    public static final double GROWTH_SUM_KELVIN_DAYS = 67;
    /** Judgement: matched to remembered respiration losses of 3.5 to 5 % of dry matter; 1.5 to 2.6 are possible. */
    public static final double HEAT_AT_20_W_PER_KG = 2.0;
    /** Judgement: inside the published 1.4 to 2.3 (15 to 35 °C) for cereal respiration in the dark. */
    public static final double HEAT_Q10_RATIO = 2.0;
    /** Judgement: steeped grain breathes about a third as fast as a lively floor. */
    public static final double STEEP_SHARE_RATIO = 0.3;
    /** Judgement: rule calibrated to remembered losses. */
    public static final double ROOTLET_Q10_RATIO = 2.2;

    public MetabolismParameters {
        above0("chitSumKelvinHours", chitSumKelvinHours);
        above0("chitSpreadRatio", chitSpreadRatio);
        above0("growthSumKelvinDays", growthSumKelvinDays);
        above0("heatQ10Ratio", heatQ10Ratio);
        above0("rootletQ10Ratio", rootletQ10Ratio);
        if (!(heatAt20WPerKg >= 0)) {
            throw new IllegalArgumentException("heatAt20WPerKg must be 0 or more: " + heatAt20WPerKg);
        }
        if (!(steepShareRatio >= 0)) {
            throw new IllegalArgumentException("steepShareRatio must be 0 or more: " + steepShareRatio);
        }
    }

    public static MetabolismParameters defaults() {
        return new MetabolismParameters(
                CHIT_SUM_KELVIN_HOURS,
                CHIT_SPREAD_RATIO,
                GROWTH_SUM_KELVIN_DAYS,
                HEAT_AT_20_W_PER_KG,
                HEAT_Q10_RATIO,
                STEEP_SHARE_RATIO,
                ROOTLET_Q10_RATIO);
    }

    public MetabolismParameters withHeatAt20WPerKg(double changedWPerKg) {
        return new MetabolismParameters(
                chitSumKelvinHours,
                chitSpreadRatio,
                growthSumKelvinDays,
                changedWPerKg,
                heatQ10Ratio,
                steepShareRatio,
                rootletQ10Ratio);
    }

    private static void above0(String name, double value) {
        if (!(value > 0)) throw new IllegalArgumentException(name + " must be above 0: " + value);
    }
}
