package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.couch.CouchCurve.Point;

class SeedLifeTest {
    /** Ellis and Roberts 1980, Ann. Bot., with the constants for barley tabulated by Dickie 1990; worked by hand. */
    @ParameterizedTest
    @CsvSource({"40, 10.3, 0.05", "45, 4.42, 0.044", "50, 1.79, 0.018"})
    void barleyOfAQuarterWaterLosesAProbitInSoManyHours(double grainC, double hours, double tolerance) {
        assertEquals(hours, SeedLife.hoursPerProbit(0.246, grainC), tolerance);
    }

    @Test
    void beyondTheLawCornsAreTakenAsWetAsItGoes() {
        assertEquals(SeedLife.hoursPerProbit(0.246, 45), SeedLife.hoursPerProbit(0.44, 45));
        assertTrue(SeedLife.hoursPerProbit(0.15, 45) > SeedLife.hoursPerProbit(0.246, 45));
    }

    private static CouchCurve level(double pileC, double hours) {
        return new CouchCurve(List.of(new Point(0, pileC, 0), new Point(hours, pileC, 0)));
    }

    /** The references: after about six hours near 50 °C the embryo is dead. */
    @Test
    void sixHoursAtFiftyLeaveFewAlive() {
        double alive = SeedLife.aliveFraction(0.97, level(50, 6), 0.40);
        assertTrue(alive > 0 && alive < 0.12, "alive: " + alive);
        assertTrue(SeedLife.aliveFraction(0.97, level(50, 12), 0.40) < 0.001);
    }

    /** Worked by hand: 97.725 % are two probits, and 8.84 h at 45 °C take two away: half are left. */
    @Test
    void twoProbitsOfLifeAreLostInTwiceTheHours() {
        assertEquals(0.5, SeedLife.aliveFraction(0.97725, level(45, 8.84), 0.30), 0.01);
    }

    @Test
    void aCoolHeapHarmsNobodyAndTheDeadStayDead() {
        assertEquals(0.97, SeedLife.aliveFraction(0.97, level(30, 48), 0.40));
        assertEquals(0, SeedLife.aliveFraction(0, level(50, 1), 0.40));
        assertTrue(SeedLife.aliveFraction(1, level(45, 1), 0.40) < 1);
    }
}
