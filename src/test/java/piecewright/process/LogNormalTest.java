package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LogNormalTest {
    /** Published: tables of the normal distribution. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # deviations, share
            -3, 0.0013499
            -1.959964, 0.025
            -1, 0.1586553
            0, 0.5
            0.841621, 0.8
            2, 0.9772499
            6, 1.0
            """)
    void normalShareAgreesWithTables(double deviations, double share) {
        assertEquals(share, LogNormal.normalShareBelow(deviations), 1e-6);
    }

    /** By definition: the median splits in half, one cv above it is one standard deviation. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            # ratio, cv, share
            1, 0.2, 0.5
            0, 0.2, 0
            -1, 0.2, 0
            1.2214028, 0.2, 0.8413447
            """)
    void shareBelowIsTheNormalShareOfTheLogarithm(double ratio, double cv, double share) {
        assertEquals(share, LogNormal.shareBelow(ratio, cv), 1e-6);
    }
}
