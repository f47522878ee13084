package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class UnevennessTest {
    /** Analytic, normal distribution of the logarithm: P = .75 and .85 at a spread of .2. */
    @Test
    void aNormalLotLeavesSomeBehindAndSomeTooFar() {
        assertEquals(0.021, Unevenness.normal().underHalfFraction(0.75), 0.001);
        assertEquals(0.075, Unevenness.normal().overgrownFraction(0.75), 0.001);
        assertEquals(0.004, Unevenness.normal().underHalfFraction(0.85), 0.001);
        assertEquals(0.208, Unevenness.normal().overgrownFraction(0.85), 0.001);
    }

    @Test
    void spreadMustBeAboveNothing() {
        assertThrows(IllegalArgumentException.class, () -> new Unevenness(0));
    }
}
