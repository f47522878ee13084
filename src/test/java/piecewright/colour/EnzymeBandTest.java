package piecewright.colour;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EnzymeBandTest {
    /** The binding prior: enzyme power to 25 points either way. */
    @Test
    void halfOfItIsKnownToTwentyFivePoints() {
        EnzymeBand band = EnzymeBand.of(0.5);
        assertEquals(0.25, band.lowFraction(), 0.035);
        assertEquals(0.75, band.highFraction(), 0.035);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.01, 0.2, 0.79, 0.99, 1})
    void noBandIsBelowNothingOrAboveAll(double told) {
        EnzymeBand band = EnzymeBand.of(told);
        assertTrue(0 <= band.lowFraction() && band.lowFraction() <= told, band.toString());
        assertTrue(told <= band.highFraction() && band.highFraction() <= 1, band.toString());
    }
}
