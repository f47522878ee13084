package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DmsPrecursorTest {
    private final DmsPrecursor precursor = new DmsPrecursor(PrecursorParameters.defaults());

    /** Published rule: 37 min in boiling wort, doubling for each 6 °C less. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            100, 0.617
            94,  1.233
            82,  4.93
            65,  35.2
            """)
    void halfLifeDoublesEverySixDegrees(double grainC, double expectedHours) {
        assertEquals(expectedHours, precursor.halfLifeHours(grainC), 0.005 * expectedHours);
        assertEquals(0.5, precursor.survivingFraction(grainC, precursor.halfLifeHours(grainC)), 1e-12);
    }

    /** Published trade window: 5.5 h at 84 °C does as much as 3 h at 90 °C. */
    @Test
    void theTradesTwoCuresLeaveTheSame() {
        double cool = precursor.survivingFraction(84, 5.5);
        double hot = precursor.survivingFraction(90, 3);
        assertEquals(0.378, cool, 0.005);
        assertEquals(0.346, hot, 0.005);
        assertEquals(1, cool / hot, 0.10);
    }
}
