package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.process.PieceState;

class CoveredStewTest {
    private static final double LAG_HOURS = 25.0 / 60;

    /** Common practice, no source: 65 to 73 °C liquefies in 1.5 to 4 h. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            65, 2.5, 4
            70, 1.5, 3.2
            73, 1.2, 3
            """)
    void stewsTakeTheHoursPracticeSays(double setC, double least, double most) {
        double hours = stew(setC).hoursToLiquid(40);
        assertTrue(hours >= least && hours <= most, "hours: " + hours);
    }

    @Test
    void tooCoolNeverLiquefies() {
        assertEquals(Double.POSITIVE_INFINITY, stew(55).hoursToLiquid(40));
        assertEquals(0, stew(70).progressPerHour(59.9));
        assertEquals(stew(80).progressPerHour(74), stew(80).progressPerHour(79));
    }

    /** Worked: a body that follows with a lag closes 1 - 1/e of the gap in one lag. */
    @Test
    void nothingEvaporatesAndTheGrainFollowsTheOven() {
        PieceState start = KilnRuns.green(46, 3);
        PieceState end = stew(70).run(start, 0, LAG_HOURS);
        assertEquals(start.mass(), end.mass());
        assertEquals(0, end.ledgers().water().evaporatedKg());
        assertEquals(70 - (70 - 16) * Math.exp(-1), end.grainC(), 1e-3);
    }

    /** Constructed law worked elsewhere: 0.43 after 4 h at 65 °C and 45 %. */
    @Test
    void stewingCostsEnzymesAndHardlyColours() {
        PieceState hot = KilnRuns.green(45, 3).withGrainC(65);
        PieceState end = stew(65).run(hot, 0, 4);
        assertEquals(0.43, end.kiln().diastaticFraction(), 0.03);
        assertTrue(end.kiln().colourEbc() > 3 && end.kiln().colourEbc() < 5);
    }

    @Test
    void impossibleStewsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> stew(101));
        assertThrows(IllegalArgumentException.class, () -> new CoveredStew(KilnParameters.defaults(), 70, 0, 9));
    }

    private static CoveredStew stew(double setC) {
        return new CoveredStew(KilnParameters.defaults(), setC, LAG_HOURS, 9);
    }
}
