package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.process.couch.CouchFixture.MODEL;
import static piecewright.process.couch.CouchFixture.booked;
import static piecewright.process.couch.CouchFixture.held;
import static piecewright.process.couch.CouchFixture.packed;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IgnitionTest {
    private static final Ignition IGNITION = new Ignition(MODEL);

    /** Reference of the fitted equations: critical kg of barley, packed at 21 °C. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # moisturePercent, airC, criticalKg, toleranceKg
            27.5, 19, 3.02, 0.06
            40, 15, 2.46, 0.05
            27.5, 15, 4.44, 0.09
            27.5, 10, 7.7, 0.1
            33, 13, 3.5, 0.1
            40, 23, 1.3, 0.06
            30, 17, 2.9, 0.06
            25, 10, 12, 0.4
            25, 19, 4.2, 0.1
            """)
    void theCriticalPileComesOut(double moisturePercent, double airC, double criticalKg, double toleranceKg) {
        assertEquals(criticalKg, IGNITION.criticalKg(moisturePercent / 100, airC, 21), toleranceKg);
    }

    /** Common practice, no source: 2.27 kg wilted did not heat; the rest by the rule of 1.4 times the critical pile. */
    @Test
    void theOutlookIsSaidBeforePacking() {
        assertEquals(Ignition.Outlook.WILL_NOT, IGNITION.outlook(packed(2.27, 27.5, 21), 18));
        assertEquals(Ignition.Outlook.MARGINAL, IGNITION.outlook(packed(3.5, 27.5, 21), 19));
        assertEquals(Ignition.Outlook.WILL_HEAT, IGNITION.outlook(packed(4.5, 27.5, 21), 19));
        assertEquals(4.5 / 3.02, IGNITION.sizeRatio(packed(4.5, 27.5, 21), 19), 0.02);
    }

    /** Reference of the fitted equations: nothing of 4.5 kg heats in a room of 5 °C. */
    @Test
    void aFreezingRoomStallsEveryPile() {
        for (double moisturePercent = 24; moisturePercent <= 48; moisturePercent += 2) {
            assertEquals(Ignition.Outlook.WILL_NOT, IGNITION.outlook(packed(4.5, moisturePercent, 21), 5));
        }
    }

    /** Property: a pile already past 45 °C needs to hold there only; a room hotter than the pile needs no size. */
    @Test
    void aWarmStartOnlyNeedsToHold() {
        assertTrue(IGNITION.criticalKg(0.275, 19, 46) < IGNITION.criticalKg(0.275, 19, 21));
        assertEquals(Double.POSITIVE_INFINITY, IGNITION.criticalKg(0.10, 0, 21));
    }

    /** Property: the threshold is what the runs do, tenfold time given; held mass. */
    @Test
    void pilesAboveTheThresholdCatchAndBelowDoNot() {
        assertTrue(held(3.02 * 1.1, 27.5, 21, 19, 200).risesToHours(45).isPresent());
        assertTrue(held(3.02 * 0.9, 27.5, 21, 19, 200).risesToHours(45).isEmpty());
    }

    /** Reference of the fitted equations: hours to 45 °C, packed at 21 °C in a room of 19. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            2.27, 33, 66, 0.6
            2.27, 40, 38, 0.6
            3.0, 33, 28, 0.6
            4.0, 27.5, 41, 0.6
            5.5, 40, 14.2, 0.1
            9.0, 27.5, 17.2, 0.1
            """)
    void hoursToFortyFiveComeOut(double barleyKg, double moisturePercent, double hours, double toleranceHours) {
        double at =
                held(barleyKg, moisturePercent, 21, 19, 120).risesToHours(45).orElseThrow();
        assertEquals(hours, at, toleranceHours);
    }

    /** Property of the fitted equations: bigger, warmer, wetter piles are quicker. */
    @Test
    void biggerWarmerWetterIsQuicker() {
        double base = hours(4.5, 30, 21, 19);
        assertTrue(hours(5.5, 30, 21, 19) < base);
        assertTrue(hours(4.5, 30, 24, 19) < base);
        assertTrue(hours(4.5, 30, 21, 21) < base);
        double before = Double.MAX_VALUE;
        for (double moisturePercent = 27; moisturePercent <= 35; moisturePercent += 2) {
            double now = hours(4.5, moisturePercent, 21, 19);
            assertTrue(now < before);
            before = now;
        }
    }

    private static double hours(double barleyKg, double moisturePercent, double pileC, double airC) {
        OptionalDouble at = booked(barleyKg, moisturePercent, pileC, airC, 120).risesToHours(45);
        return at.orElseThrow();
    }

    /** Second-hand, published: heaps come to about 50 °C; the fitted equations say 50.5 to 52.7 for every good pile. */
    @Test
    void everyGoodPilePeaksNearFifty() {
        for (double barleyKg : new double[] {3, 4.5, 6, 9}) {
            for (double moisturePercent : new double[] {27.5, 33, 40, 45}) {
                if (barleyKg < 1.4 * IGNITION.criticalKg(moisturePercent / 100, 19, 21)) continue;
                double peakC =
                        booked(barleyKg, moisturePercent, 21, 19, 96).peak().pileC();
                assertTrue(peakC > 50.5 && peakC < 52.75, barleyKg + " kg, " + moisturePercent + " %: " + peakC);
            }
        }
    }
}
