package piecewright.process.kiln;

/**
 * How fast heat colours malt: two Arrhenius laws in series, faster when moist, up to a ceiling.
 *
 * @param rateRatio this malt against the fit, more than 0; a measured colour moves it
 * @param slow the law that rules below about 150 °C
 * @param fast the transport limit that rules above
 * @param moisturePerPercent growth of the logarithm of the rate per wet-basis percent
 * @param mostEbc colour that nothing passes, EBC
 * @param couch what a hot couch adds to the substrate
 */
public record ColourParameters(
        double rateRatio, Arrhenius slow, Arrhenius fast, double moisturePerPercent, double mostEbc, Couched couch) {
    /** Judgement: fitted to 25 schedules with their colours; standard error 0.3 in the logarithm. */
    public static final double SLOW_EBC_PER_HOUR = 285;
    /** Judgement: fitted to the same schedules, standard error 8 kJ/mol; Maillard browning is usually 100 to 160. */
    public static final double SLOW_J_PER_MOL = 134_000;
    /** Judgement: 150 °C, where the slow law's figure is quoted. */
    public static final double SLOW_AT_K = 423.15;
    /** Judgement: fitted to the same schedules; standard error 0.5 in the logarithm. */
    public static final double FAST_EBC_PER_HOUR = 3600;
    /** Judgement: fitted; bread crust browns at 64 kJ/mol (Zanoni et al. 1995). */
    public static final double FAST_J_PER_MOL = 50_000;
    /** Judgement: 200 °C, where the fast law's figure is quoted. */
    public static final double FAST_AT_K = 473.15;
    /** Judgement: fitted; malt dried first colours later (Inns et al. 2007). */
    public static final double MOISTURE_PER_PERCENT = 0.10;
    /** Judgement: a little above the darkest black malt sold, 1550 EBC. */
    public static final double MOST_EBC = 1600;

    public ColourParameters {
        if (!(rateRatio > 0)) throw new IllegalArgumentException("rateRatio must be above 0: " + rateRatio);
        if (!(mostEbc > 0)) throw new IllegalArgumentException("mostEbc must be above 0: " + mostEbc);
    }

    public static ColourParameters defaults() {
        return new ColourParameters(
                1,
                new Arrhenius(SLOW_EBC_PER_HOUR, SLOW_J_PER_MOL, SLOW_AT_K),
                new Arrhenius(FAST_EBC_PER_HOUR, FAST_J_PER_MOL, FAST_AT_K),
                MOISTURE_PER_PERCENT,
                MOST_EBC,
                Couched.defaults());
    }

    public ColourParameters withRateRatio(double changedRatio) {
        return new ColourParameters(changedRatio, slow, fast, moisturePerPercent, mostEbc, couch);
    }

    /**
     * Substrate made in a hot couch: ratio exp(index / eFoldingHours), at most mostRatio.
     *
     * @param eFoldingHours couch index that multiplies the substrate by e, hours, more than 0
     * @param mostRatio ceiling, 1 or more
     */
    public record Couched(double eFoldingHours, double mostRatio) {
        /** Judgement: fitted, exp(2.5 x / 35) with the couch index x in hours. */
        public static final double E_FOLDING_HOURS = 35 / 2.5;
        /** Judgement: makes 20 to 50 EBC at cures of 80 to 90 °C, the published range of hot-couched malt. */
        public static final double MOST_RATIO = 12;

        public Couched {
            if (!(eFoldingHours > 0)) {
                throw new IllegalArgumentException("eFoldingHours must be above 0: " + eFoldingHours);
            }
            if (!(mostRatio >= 1)) throw new IllegalArgumentException("mostRatio must be 1 or more: " + mostRatio);
        }

        static Couched defaults() {
            return new Couched(E_FOLDING_HOURS, MOST_RATIO);
        }
    }
}
