package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.Psychrometrics;

class AirOnTest {
    /** Worked elsewhere: 100 m³/h of room air heated; water it can carry at its wet bulb. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            20, 0.50, 45, 119.0, 1.13
            20, 0.50, 50, 119.0, 1.31
            20, 0.50, 80, 119.0, 2.47
            10, 0.80, 60, 123.5, 1.78
            5,  0.85, 50, 126.0, 1.48
            30, 0.70, 50, 113.0, 0.96
            """)
    void heatedRoomAirCarriesWhatItsWetBulbAllows(
            double roomC, double humidityFraction, double airOnC, double flowKg, double waterKg) {
        AirOn air = AirOn.of(airOnC, 100, roomC, humidityFraction);
        assertEquals(flowKg, air.dryAirKgPerHour(), 0.1);
        double wetBulbC = Psychrometrics.wetBulbC(airOnC, air.humidityRatio(), air.pressurePa());
        double saturated = Psychrometrics.humidityRatio(wetBulbC, 1, air.pressurePa());
        assertEquals(waterKg, air.dryAirKgPerHour() * (saturated - air.humidityRatio()), 0.02);
    }

    /** Heating moves no vapour: the humidity falls as saturation rises. */
    @Test
    void heatingDriesTheAirWithoutTakingWater() {
        AirOn air = AirOn.of(50, 100, 20, 0.5);
        double expected = 0.5 * Psychrometrics.saturationPressurePa(20) / Psychrometrics.saturationPressurePa(50);
        assertEquals(expected, air.humidityFraction(), 1e-12);
    }

    @Test
    void aHeaterCannotCool() {
        assertEquals(32, AirOn.of(30, 100, 32, 0.5).airOnC());
    }

    @Test
    void impossibleAirIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> AirOn.of(50, 0, 20, 0.5));
        assertThrows(IllegalArgumentException.class, () -> AirOn.of(151, 10, 20, 0.5));
        assertThrows(IllegalArgumentException.class, () -> AirOn.of(50, 10, 20, 0));
    }
}
