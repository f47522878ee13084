package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.Heater.HotAir;
import piecewright.quantity.TemperatureRange;

class HeaterLimitTest {
    /** Worked elsewhere: 100 m³/h heated without walls. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            20, 0.50, 50, 1010
            20, 0.50, 80, 2020
            10, 0.80, 60, 1740
            5,  0.85, 50, 1600
            30, 0.70, 60, 980
            """)
    void heatingAirTakesItsEnthalpy(double roomC, double humidityFraction, double airOnC, double expectedW) {
        assertEquals(expectedW, HeaterLimit.powerW(heater(100, 5000, 0), airOnC, roomC, humidityFraction), 20);
    }

    /** Worked elsewhere: insulated boxes of 1.5 + 0.15 per kg W/K, 2.5 m³/h per kg, room 20 °C. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            1,  2.5,  50, 75
            1,  2.5,  65, 110
            10, 25,   50, 340
            10, 25,   65, 515
            50, 125,  50, 1530
            50, 62.5, 85, 1950
            """)
    void boxesTakeThePowerWorkedElsewhere(double barleyKg, double flow, double airOnC, double expectedW) {
        HotAir box = heater(flow, 5000, 1.5 + 0.15 * barleyKg);
        assertEquals(expectedW, HeaterLimit.powerW(box, airOnC, 20, 0.5), 0.04 * expectedW);
    }

    @Test
    void hottestAirIsWhereThePowerGoes() {
        HotAir box = heater(25, 400, 3);
        double hottestC = HeaterLimit.hottestAirOnC(box, 12, 0.7);
        assertTrue(hottestC > 40 && hottestC < 60, "hottest: " + hottestC);
        assertEquals(400, HeaterLimit.powerW(box, hottestC, 12, 0.7), 1e-9);
    }

    @Test
    void aStrongHeaterStopsAtItsRange() {
        assertEquals(85, HeaterLimit.hottestAirOnC(heater(25, 2000, 3), 20, 0.5));
    }

    @Test
    void noPowerIsNeededInAWarmerRoom() {
        assertEquals(0, HeaterLimit.powerW(heater(25, 2000, 3), 30, 35, 0.5));
    }

    private static HotAir heater(double airFlowM3PerHour, double powerW, double lossWPerK) {
        return new HotAir(new TemperatureRange(30, 85), airFlowM3PerHour, false, powerW, lossWPerK);
    }
}
