package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RungeKuttaTest {
    /** Analytic: y' = −y + t has y = t − 1 + 2·exp(−t) from y(0) = 1; fourth order in the step. */
    @Test
    void followsAKnownSolutionToFourthOrder() {
        assertEquals(Math.pow(2, 4), error(0.2) / error(0.1), 2);
    }

    private static double error(double stepHours) {
        double[] y = {1};
        double[] started = y;
        for (int i = 0; i < Math.round(2 / stepHours); i++) {
            y = RungeKutta.step(y, i * stepHours, stepHours, (t, now, slope) -> slope[0] = -now[0] + t);
        }
        assertArrayEquals(new double[] {1}, started);
        return Math.abs(y[0] - (2 - 1 + 2 * Math.exp(-2)));
    }
}
