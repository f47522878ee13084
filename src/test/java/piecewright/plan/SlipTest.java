package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shape is ours: free, linear to soft, quadratic to hard, impossible beyond. */
class SlipTest {
    private static final Slip SLIP = new Slip(2, 6, 8, 12, 20);

    @ParameterizedTest
    @CsvSource(textBlock = """
                    hours, costMinutes
                    1.9,   Infinity
                    2,     30
                    4,     15
                    6,     0
                    8,     0
                    10,    15
                    12,    30
                    16,    82.5
                    20,    240
                    20.1,  Infinity
                    """, useHeadersInDisplayName = true)
    void costFollowsTheWindow(double hours, double costMinutes) {
        assertEquals(costMinutes, SLIP.costMinutes(hours), 1e-9);
    }

    @Test
    void withoutASoftPartTheCostStartsFromNothing() {
        assertEquals(0, new Slip(0, 0, 12, 12, 24).costMinutes(12.0001), 1e-3);
    }

    @Test
    void limitsOutOfOrderAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Slip(2, 6, 13, 12, 20));
    }
}
