package piecewright.process.kiln;

/**
 * How grain on a tray or in a covered tin follows the oven.
 *
 * @param dryLagMinutesPerCm thermal lag of a stirred dry tray per cm of depth, minutes
 * @param sticky how liquefied, sticky grain differs
 * @param wetCapC temperature grain does not pass while wetter than wetFraction, °C
 * @param wetFraction moisture of that cap, wet basis
 * @param floorFraction moisture a dry roast falls towards, wet basis
 * @param stew how fast a covered stew liquefies
 * @param burnt dry matter that colour costs
 */
public record RoastParameters(
        double dryLagMinutesPerCm,
        Sticky sticky,
        double wetCapC,
        double wetFraction,
        double floorFraction,
        Stew stew,
        Burnt burnt) {
    /** Judgement: fitted; 12 mm of pale malt at 150 °C for 30 min reads 25 EBC only with a lag near 12 min. */
    public static final double DRY_LAG_MINUTES_PER_CM = 10;
    /** Judgement: free water boils off first. */
    public static final double WET_CAP_C = 100;
    /** Judgement: below this the water left is bound. */
    public static final double WET_FRACTION = 0.05;
    /** Judgement: the colour law was fitted with roasts near 1 %; real roasts end at 1 to 4 %. */
    public static final double FLOOR_FRACTION = 0.01;

    public RoastParameters {
        if (!(dryLagMinutesPerCm > 0)) {
            throw new IllegalArgumentException("dryLagMinutesPerCm must be above 0: " + dryLagMinutesPerCm);
        }
        if (!(floorFraction >= 0 && floorFraction < wetFraction && wetFraction < 1)) {
            throw new IllegalArgumentException(
                    "need 0 <= floorFraction < wetFraction < 1: " + floorFraction + ", " + wetFraction);
        }
    }

    public static RoastParameters defaults() {
        return new RoastParameters(
                DRY_LAG_MINUTES_PER_CM,
                Sticky.defaults(),
                WET_CAP_C,
                WET_FRACTION,
                FLOOR_FRACTION,
                Stew.defaults(),
                Burnt.defaults());
    }

    /** A stirred tray of dry malt of that depth. */
    public Layer dryLayer(double depthCm) {
        return new Layer(dryLagMinutesPerCm * depthCm / 60, floorFraction);
    }

    /** Wet or sticky grain of that depth: it trails as thin layers do, and as dry grain does where it lies deeper. */
    public Layer stickyLayer(double depthCm) {
        double lagMinutes = Math.max(sticky.lagMinutes(), dryLagMinutesPerCm * depthCm);
        return new Layer(lagMinutes / 60, sticky.floorFraction());
    }

    /**
     * A layer in the oven.
     *
     * @param lagHours thermal lag of its middle, hours, more than 0
     * @param floorFraction moisture it falls towards, wet basis
     */
    public record Layer(double lagHours, double floorFraction) {
        public Layer {
            if (!(lagHours > 0)) throw new IllegalArgumentException("lagHours must be above 0: " + lagHours);
        }
    }

    /**
     * Grain that was liquid: glassy corns.
     *
     * @param lagMinutes thermal lag of thin layers, minutes
     * @param floorFraction moisture they fall towards, wet basis
     */
    public record Sticky(double lagMinutes, double floorFraction) {
        /** Judgement: fitted to home crystal malts. */
        public static final double LAG_MINUTES = 25;
        /**
         * Judgement: crystal malts end at 3 to 7 %, common practice, no source. With it light, medium and dark ones take
         * their colour in the minutes of practice; with the floor of dry malt they took half as long again.
         */
        public static final double FLOOR_FRACTION = 0.035;

        public Sticky {
            if (!(lagMinutes > 0)) throw new IllegalArgumentException("lagMinutes must be above 0: " + lagMinutes);
            if (!(floorFraction >= 0 && floorFraction < 1)) {
                throw new IllegalArgumentException("floorFraction must be in [0, 1): " + floorFraction);
            }
        }

        static Sticky defaults() {
            return new Sticky(LAG_MINUTES, FLOOR_FRACTION);
        }
    }

    /**
     * Dry matter gone up as vapour and smoke by the time malt has a colour: fraction · (colour / atEbc)^exponent.
     *
     * @param fraction share of the dry matter at atEbc, [0, 1)
     * @param atEbc colour of that share, EBC, more than 0
     * @param exponentRatio more than 0
     */
    public record Burnt(double fraction, double atEbc, double exponentRatio) {
        /** Judgement: amber malt loses 1 to 2 % more than pale, from memory; here at the middle of its colours. */
        public static final double FRACTION = 0.0125;
        /** Source: amber malt 50 to 75 EBC, trade notes on special malts; its middle. */
        public static final double AT_EBC = 65;
        /** Judgement: joins amber's loss with 5 to 10 % of chocolate malt near 1000 EBC, from memory. */
        public static final double EXPONENT_RATIO = 0.656;

        public Burnt {
            if (!(fraction >= 0 && fraction < 1)) {
                throw new IllegalArgumentException("fraction must be in [0, 1): " + fraction);
            }
            if (!(atEbc > 0)) throw new IllegalArgumentException("atEbc must be above 0: " + atEbc);
        }

        static Burnt defaults() {
            return new Burnt(FRACTION, AT_EBC, EXPONENT_RATIO);
        }

        /** Share of the dry matter that is lost while colour goes from one figure to a higher one. */
        public double between(double fromEbc, double toEbc) {
            return 1 - (1 - lost(toEbc)) / (1 - lost(fromEbc));
        }

        private double lost(double colourEbc) {
            return Math.min(0.5, fraction * Math.pow(Math.max(0, colourEbc) / atEbc, exponentRatio));
        }
    }

    /**
     * Liquefaction: hours at coolestC, and how much hotter grain does it e times as fast.
     *
     * @param coolestC coolest temperature that stews, °C; below nothing is counted
     * @param coolestHours hours to liquid at coolestC
     * @param eFoldingK rise that divides the hours by e, K
     * @param hottestC above this it goes no faster, °C
     */
    public record Stew(double coolestC, double coolestHours, double eFoldingK, double hottestC) {
        /** Judgement: common practice, no source: stews begin at 60 to 65 °C. */
        public static final double COOLEST_C = 60;
        /** Judgement: common practice, no source: 4 h while going from 60 to 70 °C, 90 min at 68 to 73 °C. */
        public static final double COOLEST_HOURS = 5.5;
        /** Judgement: the same practice, read as 1.6 h at 70.5 °C. */
        public static final double E_FOLDING_K = 8.5;
        /** Judgement: alpha-amylase no longer gains above this. */
        public static final double HOTTEST_C = 74;

        public Stew {
            if (!(coolestHours > 0))
                throw new IllegalArgumentException("coolestHours must be above 0: " + coolestHours);
            if (!(eFoldingK > 0)) throw new IllegalArgumentException("eFoldingK must be above 0: " + eFoldingK);
            if (!(coolestC < hottestC)) {
                throw new IllegalArgumentException("coolestC must be below hottestC: " + coolestC + ", " + hottestC);
            }
        }

        static Stew defaults() {
            return new Stew(COOLEST_C, COOLEST_HOURS, E_FOLDING_K, HOTTEST_C);
        }
    }
}
