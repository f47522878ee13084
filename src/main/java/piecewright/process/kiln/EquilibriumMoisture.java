package piecewright.process.kiln;

/**
 * Water that barley keeps in air of a given temperature and humidity (modified Chung-Pfost equation). Measured between
 * about 5 and 50 °C; above that it is an extrapolation.
 */
public final class EquilibriumMoisture {
    /** Judgement: ASAE D245.5 barley, modified Chung-Pfost A, from memory; agrees with D245.4 as remembered. */
    public static final double CHUNG_PFOST_A_K = 761.66;
    /** Judgement: ASAE D245.5 barley, modified Chung-Pfost B, per dry-basis percent, from memory. */
    public static final double CHUNG_PFOST_B_PER_PERCENT = 0.19889;
    /** Judgement: ASAE D245.5 barley, modified Chung-Pfost C, from memory. */
    public static final double CHUNG_PFOST_C_K = 91.323;

    private EquilibriumMoisture() {}

    /**
     * kg of water per kg of dry matter at equilibrium, 0 where the equation would go negative.
     *
     * @param humidityFraction relative humidity, (0, 1)
     */
    public static double dryBasisRatio(double temperatureC, double humidityFraction) {
        if (!(humidityFraction > 0 && humidityFraction < 1)) {
            throw new IllegalArgumentException("humidityFraction must be in (0, 1): " + humidityFraction);
        }
        double drynessK = -(temperatureC + CHUNG_PFOST_C_K) * Math.log(humidityFraction);
        return Math.max(0, Math.log(CHUNG_PFOST_A_K / drynessK) / (100 * CHUNG_PFOST_B_PER_PERCENT));
    }

    /** Relative humidity of the air among grain of that moisture, share of one. */
    public static double humidityFraction(double temperatureC, double dryBasisRatio) {
        return Math.exp(-bindingK(dryBasisRatio) / (temperatureC + CHUNG_PFOST_C_K));
    }

    /** The part of the equation that moisture alone decides: ln(humidity) = -bindingK / (t + C). */
    static double bindingK(double dryBasisRatio) {
        return CHUNG_PFOST_A_K * Math.exp(-100 * CHUNG_PFOST_B_PER_PERCENT * dryBasisRatio);
    }
}
