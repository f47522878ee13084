package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.Psychrometrics;

/** Holds our thin-layer rate to an independent published one: Sasaki and Kanzaki 1972, barley (read as abstract). */
class DryingParametersTest {
    /** Published: the depression at which 5 % of the corns die, by initial dry-basis moisture; confirms the formula. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            30, 19.2, 5.0
            50, 16.4, 5.1
            70, 15.2, 5.0
            90, 15.0, 5.1
            """)
    void thePublishedFormulaGivesItsOwnPrintedLimits(double startPercent, double depressionK, double deadPercent) {
        double rate = publishedPerHour(startPercent, depressionK) / 0.0727;
        assertEquals(deadPercent, startPercent * (0.063 * rate - 0.085), 0.1);
    }

    @ParameterizedTest
    @CsvSource({"45", "50", "55", "60", "65", "70"})
    void barleysRateAgreesWithThePublishedOneWithinAThird(double airC) {
        double ratio = Psychrometrics.humidityRatio(20, 0.5, Psychrometrics.STANDARD_PRESSURE_PA);
        double depressionK = airC - Psychrometrics.wetBulbC(airC, ratio, Psychrometrics.STANDARD_PRESSURE_PA);
        DryingBed barley = new DryingBed(DryingParameters.defaults().withKernelRatio(1));
        double share = publishedPerHour(40, depressionK) / barley.kernelPerHour(airC);
        assertTrue(share > 0.68 && share < 1.33, "share: " + share);
    }

    @Test
    void changingTheKernelsChangesNothingElse() {
        DryingParameters usual = DryingParameters.defaults();
        DryingParameters changed = usual.withKernelRatio(0.9);
        assertEquals(0.9, changed.kernelRatio());
        assertEquals(usual, changed.withKernelRatio(usual.kernelRatio()));
    }

    @Test
    void parametersOutOfRangeAreRefused() {
        assertThrows(
                IllegalArgumentException.class,
                () -> DryingParameters.defaults().withKernelRatio(0));
        assertThrows(
                IllegalArgumentException.class,
                () -> new DryingParameters(1, 1, 1, 1, DryingParameters.Bound.defaults()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new DryingParameters(1, Double.NaN, 1, 0.9, DryingParameters.Bound.defaults()));
    }

    /** Worked: at half the moisture where it begins, a power of 10 leaves one part in 1024. */
    @Test
    void theLastWaterHoldsOn() {
        DryingParameters.Bound bound = DryingParameters.defaults().bound();
        assertEquals(1, bound.rateRatio(0.30));
        assertEquals(1, bound.rateRatio(5.0 / 95));
        assertEquals(1.0 / 1024, bound.rateRatio(2.5 / 95), 1e-12);
        assertEquals(0, bound.rateRatio(0));
    }

    private static double publishedPerHour(double startPercent, double depressionK) {
        return 0.0727 * Math.exp(0.0788 * depressionK - 0.00417 * startPercent);
    }
}
