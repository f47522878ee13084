package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LimitsTest {
    /** Common practice, no source: chitted grain under water, soft 4 h and hard 8 h to 16 °C, 2 and 4 h from 18 °C. */
    @ParameterizedTest
    @CsvSource({"10, 4, 8", "16, 4, 8", "17, 3, 6", "18, 2, 4", "25, 2, 4"})
    void chittedGrainUnderWaterIsInterpolated(double waterC, double softHours, double hardHours) {
        assertEquals(softHours, Practice.CHITTED_UNDER_WATER.softHours(waterC), 1e-9);
        assertEquals(hardHours, Practice.CHITTED_UNDER_WATER.hardHours(waterC), 1e-9);
    }

    /** Common practice, no source: an 11 h gap fits 10 cm at 16 °C and 5 cm at 20 °C, and nothing at 24 °C. */
    @Test
    void depthBuysAbsence() {
        assertTrue(Practice.turning(10).softHours(16) >= 11);
        assertTrue(Practice.turning(5).softHours(20) >= 11);
        assertTrue(Practice.turning(5).hardHours(24) < 11);
    }

    /** Published: trade texts turn every 8 h, 6 to 12 by depth. */
    @Test
    void bedsAreTurnedEverySixToTwelveHours() {
        for (double depthCm : new double[] {3, 5, 8, 10, 15, 20, 25}) {
            double hours = Practice.preferredTurnHours(depthCm);
            assertTrue(hours >= 6 && hours <= 12, hours + " h at " + depthCm + " cm");
            assertTrue(hours <= Practice.preferredTurnHours(depthCm - 2), "deeper is sooner");
        }
    }

    /** Common practice, no source, at its own temperatures: first looks at a wet couch; afterwards by its size. */
    @ParameterizedTest
    @CsvSource({"10, 12, 18", "15, 8, 12", "20, 5, 8"})
    void aWetCouchIsLookedAtSoonerTheWarmerItIs(double heapC, double softHours, double hardHours) {
        assertEquals(softHours, Practice.WET_COUCH_LOOK.softHours(heapC), 1e-9);
        assertEquals(hardHours, Practice.WET_COUCH_LOOK.hardHours(heapC), 1e-9);
        assertEquals(8, Practice.warmHeapLook(6).hardHours(heapC), 1e-9);
        assertEquals(14, Practice.warmHeapLook(3).hardHours(heapC), 1e-9);
        assertEquals(11, Practice.warmHeapLook(4.5).hardHours(heapC), 1e-9);
    }

    /** Common practice, no source: the first immersion's soft limit is about 12·2^((14−T)/6) hours. */
    @ParameterizedTest
    @CsvSource({"11.5", "14.5", "18", "22"})
    void theFirstImmersionFollowsTheRuleOfThumb(double waterC) {
        double thumb = 12 * Math.pow(2, (14 - waterC) / 6);
        assertEquals(1, Practice.FIRST_IMMERSION.softHours(waterC) / thumb, 0.3);
    }
}
