package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hummeling.if97.IF97;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Oracles: state values of the ASHRAE Fundamentals handbook (2017), Psychrometrics, as quoted by the tests of an open
 * psychrometric library; and the industrial steam tables IAPWS-IF97.
 */
class PsychrometricsTest {
    private static final double SEA_PA = Psychrometrics.STANDARD_PRESSURE_PA;

    /** Published: ASHRAE 2017 table of saturation pressures, through an open library's tests. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            -20, 103.24
            5,   872.6
            25,  3169.7
            50,  12351.3
            100, 101418
            """)
    void saturationPressureAgreesWithTheHandbook(double temperatureC, double expectedPa) {
        assertEquals(expectedPa, Psychrometrics.saturationPressurePa(temperatureC), 3e-4 * expectedPa);
    }

    /** Published: IAPWS-IF97 saturation line; the two formulations differ by less than 1 part in 2000 here. */
    @ParameterizedTest
    @ValueSource(doubles = {5, 10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95, 100})
    void saturationPressureAgreesWithTheSteamTables(double temperatureC) {
        double expectedPa = 1e6 * new IF97().saturationPressureT(temperatureC + 273.15);
        assertEquals(expectedPa, Psychrometrics.saturationPressurePa(temperatureC), 5e-4 * expectedPa);
    }

    /** Published: ASHRAE 2017, saturated air at 101.325 kPa. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5,  0.005425, 0.005
            25, 0.020173, 0.005
            50, 0.086863, 0.01
            85, 0.838105, 0.02
            """)
    void saturatedAirHoldsWhatTheHandbookSays(double temperatureC, double expectedRatio, double toleranceFraction) {
        assertEquals(
                expectedRatio,
                Psychrometrics.humidityRatio(temperatureC, 1, SEA_PA),
                toleranceFraction * expectedRatio);
    }

    /** Published: ASHRAE 2017, saturated air at 101.325 kPa. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            25, 76.504
            50, 275.353
            """)
    void saturatedAirHasTheEnthalpyTheHandbookSays(double temperatureC, double expectedKJPerKg) {
        double ratio = Psychrometrics.humidityRatio(temperatureC, 1, SEA_PA);
        assertEquals(expectedKJPerKg, Psychrometrics.enthalpyKJPerKg(temperatureC, ratio), 0.01 * expectedKJPerKg);
    }

    /** Published: ASHRAE 2017, Psychrometrics, example 1: dry bulb 40 °C, wet bulb 20 °C. */
    @Test
    void theHandbooksFirstExampleComesOut() {
        double ratio = Psychrometrics.ratioAtWetBulb(40, 20, SEA_PA);
        assertEquals(0.0065, ratio, 1e-4);
        assertEquals(7, Psychrometrics.dewPointC(ratio, SEA_PA), 0.5);
        assertEquals(0.14, Psychrometrics.relativeHumidityFraction(40, ratio, SEA_PA), 0.005);
        assertEquals(56.7, Psychrometrics.enthalpyKJPerKg(40, ratio), 0.1);
        assertEquals(0.896, Psychrometrics.specificVolumeM3PerKg(40, ratio, SEA_PA), 0.00896);
    }

    /** Published: open psychrometric library's tests. */
    @Test
    void wetBulbAgreesWithAPublishedState() {
        double ratio = Psychrometrics.humidityRatio(7, 0.61, 100_000);
        assertEquals(3.9267, Psychrometrics.wetBulbC(7, ratio, 100_000), 0.001 * 3.9267);
        assertEquals(0.0192281, Psychrometrics.ratioAtWetBulb(30, 25, 95461), 3e-4 * 0.0192281);
    }

    /** From memory: the same library's tests, a frosted wet bulb. */
    @Test
    void aFrostedWetBulbAgreesWithARememberedState() {
        double ratio = Psychrometrics.ratioAtWetBulb(-1, -5, 95461);
        assertEquals(0.00120399, ratio, 3e-4 * 0.00120399);
        assertEquals(-5, Psychrometrics.wetBulbC(-1, ratio, 95461), 1e-5);
    }

    /** Published: open psychrometric library's tests. */
    @Test
    void enthalpyAndVolumeAgreeWithPublishedStates() {
        assertEquals(81.316, Psychrometrics.enthalpyKJPerKg(30, 0.02), 3e-4 * 81.316);
        assertEquals(0.940855, Psychrometrics.specificVolumeM3PerKg(30, 0.02, 95461), 3e-4 * 0.940855);
    }

    /** Published: standard atmosphere. */
    @Test
    void pressureFallsWithAltitudeAsTheStandardAtmosphereDoes() {
        assertEquals(95461, Psychrometrics.pressurePaAtAltitude(500), 1);
        assertEquals(89875, Psychrometrics.pressurePaAtAltitude(1000), 1);
        assertEquals(SEA_PA, Psychrometrics.pressurePaAtAltitude(0));
    }

    /** Computed from the full wet-bulb relation: room air of 20 °C and 50 % heated to 50 °C. */
    @Test
    void roomAirHeatedToFiftyHasItsWetBulbAtTwentyThreeAndAHalf() {
        double ratio = Psychrometrics.humidityRatio(20, 0.5, SEA_PA);
        double wetBulbC = Psychrometrics.wetBulbC(50, ratio, SEA_PA);
        assertEquals(23.50, wetBulbC, 0.05);
        assertEquals(0.01104, Psychrometrics.humidityRatio(wetBulbC, 1, SEA_PA) - ratio, 1e-4);
    }

    @Test
    void wetBulbOfSaturatedAirIsItsOwnTemperature() {
        for (double temperatureC : new double[] {-5, 3, 18, 45}) {
            double ratio = Psychrometrics.humidityRatio(temperatureC, 1, SEA_PA);
            assertEquals(temperatureC, Psychrometrics.wetBulbC(temperatureC, ratio, SEA_PA), 1e-5);
            assertEquals(temperatureC, Psychrometrics.dewPointC(ratio, SEA_PA), 1e-5);
        }
    }

    /** Worked: 12.350 kPa at 50 °C, three quarters of it missing at 25 %. */
    @Test
    void vapourPressureDeficitIsTheMissingShareOfSaturation() {
        assertEquals(12.350 * 0.75, Psychrometrics.vapourPressureDeficitKPa(50, 0.25), 0.002);
        assertEquals(0, Psychrometrics.vapourPressureDeficitKPa(20, 1));
    }

    @Test
    void saturationIsUnbrokenAtTheFreezingPoint() {
        double below = Psychrometrics.saturationPressurePa(-1e-9);
        assertEquals(below, Psychrometrics.saturationPressurePa(0), 2e-4 * below);
    }

    @Test
    void impossibleAirIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Psychrometrics.saturationPressurePa(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> Psychrometrics.humidityRatio(20, 1.1, SEA_PA));
        var refused = assertThrows(IllegalArgumentException.class, () -> Psychrometrics.humidityRatio(110, 1, SEA_PA));
        assertTrue(refused.getMessage().startsWith("pressurePa must exceed the vapour's"));
    }
}
