package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.process.couch.CouchCurve.Point;

/** A made-up tent of a curve, figures by hand. */
class CouchCurveTest {
    private static final CouchCurve TENT = new CouchCurve(
            List.of(new Point(0, 20, 0), new Point(10, 40, 1), new Point(20, 50, 5), new Point(30, 30, 8)));

    @Test
    void momentsLieOnStraightLines() {
        assertEquals(2.5, TENT.risesToHours(25).orElseThrow(), 1e-12);
        assertEquals(15, TENT.risesToHours(45).orElseThrow(), 1e-12);
        assertEquals(22.5, TENT.fallsToHours(45).orElseThrow(), 1e-12);
        assertEquals(new Point(20, 50, 5), TENT.peak());
        assertEquals(45, TENT.pileC(15), 1e-12);
        assertEquals(20, TENT.pileC(-3), 1e-12);
        assertEquals(30, TENT.pileC(31), 1e-12);
        assertEquals(15, TENT.reachesIndexHours(3).orElseThrow(), 1e-12);
    }

    @Test
    void hoursAboveAreSummedUpAndDown() {
        assertEquals(7.5, TENT.hoursAbove(45), 1e-12);
        assertEquals(30, TENT.hoursAbove(20), 1e-12);
        assertEquals(0, TENT.hoursAbove(51), 1e-12);
    }

    @Test
    void whatDoesNotHappenIsEmpty() {
        assertTrue(TENT.risesToHours(53).isEmpty());
        assertTrue(TENT.fallsToHours(25).isEmpty());
        assertTrue(TENT.reachesIndexHours(9).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> new CouchCurve(List.of()));
    }

    @Test
    void aDipBeforeThePeakIsNoFall() {
        CouchCurve dipped = new CouchCurve(
                List.of(new Point(0, 30, 0), new Point(1, 20, 0), new Point(2, 50, 0), new Point(3, 10, 0)));
        assertEquals(2.625, dipped.fallsToHours(25).orElseThrow(), 1e-12);
    }
}
