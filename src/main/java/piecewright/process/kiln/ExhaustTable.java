package piecewright.process.kiln;

import piecewright.process.Psychrometrics;

/**
 * {@link ExhaustLimit} at sea level over the air's enthalpy and the grain's moisture, by cubic polynomials through the
 * four nearest points each way; the points are solved for once. A test holds it to the equation within 2e-4 K.
 */
final class ExhaustTable {
    /** Judgement: the one figure of wet grain's air that is tabulated. */
    static final double WETTEST_FRACTION = DryingParameters.WETTEST_FRACTION;

    /** Judgement: air at freezing point, nearly dry; colder air is solved for. */
    private static final double LEAST_KJ_PER_KG = 4;
    /** Judgement: fine enough for the error stated above. */
    private static final double STEP_KJ_PER_KG = 4;
    /** Judgement: up to air at 150 °C from a room as moist as a greenhouse. */
    private static final int ENTHALPIES = 76;
    /** Judgement: fine enough for the error stated above. */
    private static final double STEP_RATIO = 0.0025;
    /** Judgement: up to a moisture at which grain of any temperature keeps nothing back. */
    private static final int MOISTURES = 184;
    /** Judgement: below, the law of saturation is another, with a kink between; such air is solved for. */
    private static final double COLDEST_C = 0;
    /** Judgement: hotter than any air-on; the laws of saturation end at 200 °C. */
    private static final double HOTTEST_C = 190;

    /** Judgement: the points themselves are as good as exact. */
    private static final double LAST_STEP_K = 1e-6;

    /** By enthalpy: the limit of grain as wet as can be, °C. Source: {@link ExhaustLimit#solvedC}. */
    private static final double[] WET_C = new double[ENTHALPIES];
    /**
     * By enthalpy, then by moisture: the limit of grain that keeps its water by its moisture alone, °C. Source: {@link
     * ExhaustLimit#solvedC}.
     */
    private static final double[] SORBED_C = new double[ENTHALPIES * MOISTURES];

    static {
        for (int i = 0; i < ENTHALPIES; i++) {
            double enthalpy = LEAST_KJ_PER_KG + i * STEP_KJ_PER_KG;
            WET_C[i] = point(enthalpy, WETTEST_FRACTION, 0);
            for (int j = 0; j < MOISTURES; j++) {
                SORBED_C[i * MOISTURES + j] = point(enthalpy, 1, EquilibriumMoisture.bindingK(j * STEP_RATIO));
            }
        }
    }

    private ExhaustTable() {}

    /** A point of the table; NaN where it is none, and so is all that leans on it. */
    private static double point(double enthalpyKJPerKg, double wettestFraction, double bindingK) {
        double dryC = enthalpyKJPerKg / Psychrometrics.DRY_AIR_KJ_PER_KG_K;
        double limitC = new ExhaustLimit(enthalpyKJPerKg, Psychrometrics.STANDARD_PRESSURE_PA, wettestFraction)
                .solvedC(bindingK, Math.min(HOTTEST_C, 0.9999 * dryC), LAST_STEP_K);
        return limitC > COLDEST_C && limitC < HOTTEST_C ? limitC : Double.NaN;
    }

    /** The limit were the air-on no bound, °C; NaN where the table does not reach. dryBasisRatio is 0 or more. */
    static double limitC(double enthalpyKJPerKg, double dryBasisRatio) {
        double row = (enthalpyKJPerKg - LEAST_KJ_PER_KG) / STEP_KJ_PER_KG;
        if (!(row >= 1 && row < ENTHALPIES - 2)) return Double.NaN;
        int before = (int) row;
        double share = row - before;
        double wetC = cubic(share, WET_C, before - 1);
        double column = dryBasisRatio / STEP_RATIO;
        if (column >= MOISTURES - 2) return wetC;
        int left = Math.max(1, (int) column);
        double across = column - left;
        int at = (before - 1) * MOISTURES + left - 1;
        double sorbedC = cubic(
                share,
                cubic(across, SORBED_C, at),
                cubic(across, SORBED_C, at + MOISTURES),
                cubic(across, SORBED_C, at + 2 * MOISTURES),
                cubic(across, SORBED_C, at + 3 * MOISTURES));
        return Math.max(wetC, sorbedC);
    }

    private static double cubic(double share, double[] points, int at) {
        return cubic(share, points[at], points[at + 1], points[at + 2], points[at + 3]);
    }

    /** Lagrange's cubic through points at -1, 0, 1 and 2. */
    private static double cubic(double share, double p0, double p1, double p2, double p3) {
        double curl = (p3 - p0 + 3 * (p1 - p2)) / 6;
        double bend = (p0 + p2) / 2 - p1;
        double slope = p2 - p1 - bend - curl;
        return p1 + share * (slope + share * (bend + share * curl));
    }
}
