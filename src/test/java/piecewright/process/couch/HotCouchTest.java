package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static piecewright.process.couch.CouchFixture.MODEL;
import static piecewright.process.couch.CouchFixture.air;
import static piecewright.process.couch.CouchFixture.booked;
import static piecewright.process.couch.CouchFixture.held;
import static piecewright.process.couch.CouchFixture.packed;

import org.junit.jupiter.api.Test;
import piecewright.process.PieceState;

/** Reference runs of the fitted equations, and the heating curves of one practice (common practice, no source). */
class HotCouchTest {
    private static void assertCurve(CouchCurve curve, double[][] hoursAndC) {
        for (double[] row : hoursAndC) assertEquals(row[1], curve.pileC(row[0]), row[2], "at " + row[0] + " h");
    }

    /** Reference run A: 4.5 kg, 27.5 %, 21 °C in a room of 19 °C. */
    @Test
    void theWiltedRunComesOut() {
        CouchCurve curve = held(4.5, 27.5, 21, 19, 72);
        assertCurve(curve, new double[][] {
            {6, 24.21, .05},
            {12, 27.01, .05},
            {18, 29.85, .05},
            {24, 33.32, .05},
            {30, 39.25, .05},
            {34, 49.91, .15},
            {36, 51.12, .05},
            {41, 50.19, .05},
            {48, 48.21, .05},
            {60, 38.97, .05},
            {72, 29.12, .05}
        });
        assertEquals(32.67, curve.risesToHours(45).orElseThrow(), 0.05);
        assertEquals(33.74, curve.risesToHours(49).orElseThrow(), 0.05);
        assertEquals(51.17, curve.peak().pileC(), 0.03);
        assertEquals(35.4, curve.peak().atHours(), 0.1);
        assertEquals(20.8, curve.hoursAbove(45), 0.2);
        assertEquals(12.2, curve.hoursAbove(49), 0.2);
        PieceState end = HotCouch.holdingMass(MODEL, air(19)).run(packed(4.5, 27.5, 21), 0, 48);
        assertEquals(0.406, end.couch().capacityRatio(), 0.003);
        assertEquals(8.9, end.couch().indexHours(), 0.06);
        assertIndex(curve, new double[][] {{36, 3.7}, {40, 5.5}, {48, 8.9}, {72, 13.9}});
    }

    private static void assertIndex(CouchCurve curve, double[][] hoursAndIndex) {
        for (double[] row : hoursAndIndex) {
            double index = curve.points().stream()
                    .filter(point -> point.atHours() <= row[0] + 1e-6)
                    .reduce((first, second) -> second)
                    .orElseThrow()
                    .indexHours();
            assertEquals(row[1], index, 0.06);
        }
    }

    /** Reference run B: 4.5 kg, 40 %, 22 °C in a room of 19 °C. */
    @Test
    void theWetRunComesOut() {
        CouchCurve curve = held(4.5, 40, 22, 19, 48);
        assertCurve(curve, new double[][] {
            {3, 24.63, .05}, {6, 27.52, .05}, {9, 31.03, .05}, {12, 36.03, .05}, {15, 46.50, .15},
            {18, 51.80, .05}, {24, 50.69, .05}, {30, 49.40, .05}, {41, 44.36, .05}, {48, 39.03, .05}
        });
        assertEquals(14.74, curve.risesToHours(45).orElseThrow(), 0.05);
        assertEquals(51.92, curve.peak().pileC(), 0.03);
        assertEquals(16.9, curve.peak().atHours(), 0.11);
        assertEquals(25.3, curve.hoursAbove(45), 0.2);
        PieceState end = HotCouch.holdingMass(MODEL, air(19)).run(packed(4.5, 40, 22), 0, 48);
        assertEquals(0.219, end.couch().capacityRatio(), 0.003);
        assertIndex(curve, new double[][] {{18, 6.9}, {24, 14.4}, {30, 21.3}, {40, 31.1}, {48, 36.4}});
    }

    /** Reference run C: 4.5 kg, 27.5 %, 15 °C in a room of 17.5 °C. */
    @Test
    void theColdRunComesOut() {
        CouchCurve curve = held(4.5, 27.5, 15, 17.5, 80);
        assertEquals(21.7, curve.risesToHours(25).orElseThrow(), 0.1);
        assertEquals(56.36, curve.risesToHours(45).orElseThrow(), 0.1);
        assertEquals(51.09, curve.peak().pileC(), 0.03);
    }

    /** Common practice, no source: wilted, 49 to 51 °C at about 34 h and for about 14 h, falling at 47.5 h. */
    @Test
    void practiceHeatsTheWiltedPileInADayAndAHalf() {
        CouchCurve curve = booked(4.5, 27.5, 21, 19, 60);
        assertEquals(34, curve.risesToHours(49).orElseThrow(), 3);
        assertEquals(50, curve.pileC(36), 1.5);
        for (double hours = 35; hours <= 46; hours++) assertEquals(50, curve.pileC(hours), 3);
        assertEquals(49.4, curve.pileC(47.5), 2);
    }

    /** Common practice, no source: wet, 47 °C at 15 h and climbing, 50.9 about 24 h, 44.8 at 39 h. */
    @Test
    void practiceHeatsTheWetPileOvernight() {
        CouchCurve curve = held(4.5, 40, 22, 19, 48);
        assertEquals(47, curve.pileC(15), 1.5);
        assertEquals(50.9, curve.pileC(24), 1.5);
        assertEquals(44.8, curve.pileC(39), 1.5);
        CouchCurve booked = booked(4.5, 40, 22, 19, 48);
        assertEquals(14.7, booked.risesToHours(45).orElseThrow(), 0.5);
        assertEquals(50.9, booked.pileC(24), 1.5);
        assertEquals(44.8, booked.pileC(39), 2.5);
    }

    /** Common practice, no source: a cold start in a cooler room costs about a day. */
    @Test
    void aColdStartCostsADay() {
        double cold = booked(4.5, 27.5, 15, 17.5, 96).risesToHours(45).orElseThrow();
        double warm = booked(4.5, 27.5, 21, 19, 96).risesToHours(45).orElseThrow();
        assertEquals(24, cold - warm, 6);
    }

    /** Common practice, no source: 2.27 kg in the same box never get hot within two days, wilted or wet. */
    @Test
    void halfABatchStaysCold() {
        assertTrue(held(2.27, 27.5, 21, 18, 48).peak().pileC() < 25);
        assertTrue(booked(2.27, 27.5, 21, 18, 48).risesToHours(45).isEmpty());
        assertTrue(held(2.27, 40, 21, 18, 48).risesToHours(45).isEmpty());
        assertTrue(booked(2.27, 40, 21, 18, 48).risesToHours(45).isEmpty());
    }

    /** Judgement of the model: the couch costs 3.0 % of dry matter wilted, 3.8 % wet. */
    @Test
    void aCouchCostsThreeToFourPercent() {
        assertEquals(0.030, lost(27.5, 21), 0.002);
        assertEquals(0.038, lost(40, 22), 0.002);
    }

    private static double lost(double moisturePercent, double pileC) {
        PieceState start = packed(4.5, moisturePercent, pileC);
        PieceState end = new HotCouch(MODEL, air(19)).run(start, 0, 48);
        return 1 - end.mass().dryMatterKg() / start.mass().dryMatterKg();
    }

    /** Common practice, no source: a wetter, a larger and a warmer kept couch is worth more colour after the same hours. */
    @Test
    void wetterLargerAndWarmerCouchesAreWorthMoreColour() {
        double[][] rising = {
            {index(4.5, 27.5, 19), index(4.5, 30, 19), index(4.5, 33, 19), index(4.5, 36, 19), index(4.5, 40, 19)},
            {index(4, 33, 19), index(4.5, 33, 19), index(5.5, 33, 19), index(7, 33, 19)},
            {index(4.5, 33, 17), index(4.5, 33, 19), index(4.5, 33, 21), index(4.5, 33, 23)}
        };
        for (double[] row : rising) {
            for (int i = 1; i < row.length; i++) assertTrue(row[i] > row[i - 1], row[i] + " after " + row[i - 1]);
        }
    }

    private static double index(double barleyKg, double moisturePercent, double airC) {
        PieceState end = new HotCouch(MODEL, air(airC)).run(packed(barleyKg, moisturePercent, 21), 0, 48);
        return end.couch().indexHours();
    }

    /** Judgement of the model: water formed nearly replaces water evaporated, 45 g a day at 50 °C. */
    @Test
    void waterIsNearlyReplaced() {
        PieceState start = packed(4.5, 40, 22);
        PieceState end = new HotCouch(MODEL, air(19)).run(start, 0, 48);
        assertEquals(start.mass().waterKg(), end.mass().waterKg(), 0.05);
        double evaporatedKg = end.ledgers().water().evaporatedKg();
        assertTrue(evaporatedKg > 0.04 && evaporatedKg < 0.11, "evaporated " + evaporatedKg);
        double formedKg =
                end.ledgers().water().formedKg() - start.ledgers().water().formedKg();
        assertEquals(
                start.mass().waterKg() + formedKg - evaporatedKg, end.mass().waterKg(), 1e-12);
    }

    /** Reference: steps of five minutes and of one differ by less than .01 °C. */
    @Test
    void fiveMinutesAreShortEnough() {
        for (double[] run : new double[][] {{27.5, 21}, {40, 22}}) {
            HotCouch couch = HotCouch.holdingMass(MODEL, air(19));
            PieceState coarse = packed(4.5, run[0], run[1]);
            PieceState fine = coarse;
            for (int step = 0; step < 48 * 12; step++) {
                coarse = couch.step(coarse, step / 12.0, 1 / 12.0);
                for (int i = 0; i < 5; i++) fine = couch.step(fine, step / 12.0 + i / 60.0, 1 / 60.0);
                assertEquals(fine.grainC(), coarse.grainC(), 0.01);
            }
        }
    }

    /** Analytic: with dead corns a pile cools by Newton's law, vapour apart. */
    @Test
    void aDeadPileCools() {
        CouchParameters dry = CouchParameters.defaults().withBox(new CouchParameters.Box(0.424, 3, 0));
        CouchModel dead = new CouchModel(dry, 0);
        PieceState start = packed(4.5, 40, 50);
        double capacity =
                dead.capacityKJPerK(start.mass().dryMatterKg(), start.mass().waterKg());
        PieceState end = new HotCouch(dead, air(20)).run(start, 0, 6);
        assertEquals(20 + 30 * Math.exp(-3.6 * 0.424 * 6 / capacity), end.grainC(), 1e-4);
    }
}
