package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class GrowthRateTest {
    /** Worked by hand: 50 corns at half where .40 was expected. */
    @Test
    void oneCountMovesTheRateMostOfTheWay() {
        assertEquals(0.1593, GrowthRate.observedLogRatio(0.50, 0.40), 0.0003);
        GrowthRate after = GrowthRate.prior().counted(0.50, 0.40, 50, Unevenness.normal());
        assertEquals(0.1254, after.logRatio(), 0.0003);
        assertEquals(Math.exp(0.1254), after.rateRatio(), 0.0004);
    }

    /** Judgement of the model: one count leaves about a tenth of doubt; counts may come in any order. */
    @Test
    void countsAddUp() {
        GrowthRate one = GrowthRate.prior().counted(0.50, 0.40, 50, Unevenness.normal());
        assertEquals(0.10, Math.sqrt(one.varianceRatio()), 0.01);
        GrowthRate forth = one.counted(0.7, 0.6, 100, Unevenness.normal());
        GrowthRate back = GrowthRate.prior()
                .counted(0.7, 0.6, 100, Unevenness.normal())
                .counted(0.50, 0.40, 50, Unevenness.normal());
        assertEquals(forth.logRatio(), back.logRatio(), 1e-12);
        assertTrue(forth.varianceRatio() < one.varianceRatio());
        assertThrows(
                IllegalArgumentException.class, () -> GrowthRate.prior().counted(0.5, 0.4, 0, Unevenness.normal()));
    }

    /** Analytic, worked from the normal distribution: at P = .75 2.1 % under half, 7.5 % over; at .85 .4 and 20.8. */
    @Test
    void unevennessSplitsTheCorns() {
        Unevenness normal = Unevenness.normal();
        assertEquals(0.021, normal.underHalfFraction(0.75), 0.001);
        assertEquals(0.075, normal.overgrownFraction(0.75), 0.001);
        assertEquals(0.004, normal.underHalfFraction(0.85), 0.001);
        assertEquals(0.208, normal.overgrownFraction(0.85), 0.001);
        assertThrows(IllegalArgumentException.class, () -> new Unevenness(0));
    }
}
