package piecewright.process.kiln;

/**
 * How grain on a tray or in a covered tin follows the oven.
 *
 * @param dryLagMinutesPerCm thermal lag of a stirred dry tray per cm of depth, minutes
 * @param stickyLagMinutes thermal lag of liquefied, sticky grain, minutes
 * @param wetCapC temperature grain does not pass while wetter than wetFraction, °C
 * @param wetFraction moisture of that cap, wet basis
 * @param floorFraction moisture a roast falls towards, wet basis
 * @param stew how fast a covered stew liquefies
 */
public record RoastParameters(
        double dryLagMinutesPerCm,
        double stickyLagMinutes,
        double wetCapC,
        double wetFraction,
        double floorFraction,
        Stew stew) {
    /** Judgement: fitted; 12 mm of pale malt at 150 °C for 30 min reads 25 EBC only with a lag near 12 min. */
    public static final double DRY_LAG_MINUTES_PER_CM = 10;
    /** Judgement: fitted to home crystal malts. */
    public static final double STICKY_LAG_MINUTES = 25;
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
        if (!(stickyLagMinutes > 0)) {
            throw new IllegalArgumentException("stickyLagMinutes must be above 0: " + stickyLagMinutes);
        }
        if (!(floorFraction >= 0 && floorFraction < wetFraction && wetFraction < 1)) {
            throw new IllegalArgumentException(
                    "need 0 <= floorFraction < wetFraction < 1: " + floorFraction + ", " + wetFraction);
        }
    }

    public static RoastParameters defaults() {
        return new RoastParameters(
                DRY_LAG_MINUTES_PER_CM, STICKY_LAG_MINUTES, WET_CAP_C, WET_FRACTION, FLOOR_FRACTION, Stew.defaults());
    }

    /** Thermal lag of a stirred dry tray of that depth, hours. */
    public double dryLagHours(double depthCm) {
        return dryLagMinutesPerCm * depthCm / 60;
    }

    /** Thermal lag of sticky grain, hours. */
    public double stickyLagHours() {
        return stickyLagMinutes / 60;
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
