package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Oracles: the same equation worked elsewhere; its constants are from memory, so these hold the code, not barley. */
class EquilibriumMoistureTest {
    @ParameterizedTest
    @CsvSource(textBlock = """
            25, 0.70, 14.63
            20, 0.60, 13.05
            50, 0.40, 8.91
            80, 0.10, 3.31
            """)
    void barleyKeepsAsMuchWaterAsWorkedElsewhere(double airC, double humidityFraction, double expectedPercent) {
        assertEquals(expectedPercent, 100 * EquilibriumMoisture.dryBasisRatio(airC, humidityFraction), 0.02);
    }

    @Test
    void humidityAmongGrainIsTheInverse() {
        assertEquals(0.647, EquilibriumMoisture.humidityFraction(25, 0.13636), 0.001);
        for (double temperatureC = 5; temperatureC <= 85; temperatureC += 10) {
            for (double humidity = 0.05; humidity < 0.99; humidity += 0.1) {
                double ratio = EquilibriumMoisture.dryBasisRatio(temperatureC, humidity);
                if (ratio > 0) {
                    assertEquals(humidity, EquilibriumMoisture.humidityFraction(temperatureC, ratio), 1e-9);
                }
            }
        }
    }

    /** From memory: two editions of the standard write the same curve; exp(E / F) of the older is A of the newer. */
    @Test
    void rememberedEditionsOfTheStandardAgree() {
        assertEquals(Math.exp(0.33363 / 0.050279), EquilibriumMoisture.CHUNG_PFOST_A_K, 0.1);
        assertEquals(1 / (100 * 0.050279), EquilibriumMoisture.CHUNG_PFOST_B_PER_PERCENT, 1e-5);
    }

    /** From memory: modified Henderson, the same standard's other equation for barley; 15.19 % at 25 °C and 70 %. */
    @Test
    void anotherEquationForBarleySaysNearlyTheSame() {
        assertEquals(15.19, hendersonPercent(25, 0.70), 0.02);
        for (double temperatureC = 20; temperatureC <= 50; temperatureC += 5) {
            for (double humidity = 0.2; humidity <= 0.81; humidity += 0.1) {
                double chungPfostPercent = 100 * EquilibriumMoisture.dryBasisRatio(temperatureC, humidity);
                assertEquals(hendersonPercent(temperatureC, humidity), chungPfostPercent, 0.8);
            }
        }
    }

    @Test
    void warmerOrDrierAirLeavesLessWater() {
        assertTrue(EquilibriumMoisture.dryBasisRatio(60, 0.3) < EquilibriumMoisture.dryBasisRatio(50, 0.3));
        assertTrue(EquilibriumMoisture.dryBasisRatio(50, 0.2) < EquilibriumMoisture.dryBasisRatio(50, 0.3));
        assertEquals(0, EquilibriumMoisture.dryBasisRatio(105, 0.001));
    }

    @Test
    void humidityOutsideItsRangeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> EquilibriumMoisture.dryBasisRatio(25, 0));
        assertThrows(IllegalArgumentException.class, () -> EquilibriumMoisture.dryBasisRatio(25, 1));
    }

    private static double hendersonPercent(double temperatureC, double humidityFraction) {
        return Math.pow(-Math.log(1 - humidityFraction) / (2.2919e-5 * (temperatureC + 195.267)), 1 / 2.0123);
    }
}
