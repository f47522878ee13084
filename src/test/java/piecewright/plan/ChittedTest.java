package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.SteepState;
import piecewright.quantity.Moisture;

/** What a count of chitted corns makes of the forecast. */
class ChittedTest {
    private static final Metabolism LOT = new Metabolism(0.96, 1, MetabolismParameters.defaults());

    private static PieceState forecast(double chitRatio, double growthRatio) {
        PieceState raw = PieceState.rawGrain(5, new Moisture(0.44), 1, 2, 14);
        return raw.withSteep(new SteepState(0.6, 0.1, 20, 3, chitRatio))
                .withGrowth(raw.growth().withGrowthRatio(growthRatio));
    }

    private static double chitted(int shown, int of, PieceState forecast) {
        return LOT.chittedFraction(
                new Chitted(shown, of).held(forecast, LOT).steep().chitRatio());
    }

    @Test
    void aCountOfAHundredIsBelieved() {
        assertEquals(0.12 / 0.96, chitted(12, 100, forecast(1.2, 0.05)), 0.03);
        assertEquals(0.70 / 0.96, chitted(70, 100, forecast(0.9, 0)), 0.04);
    }

    @Test
    void fewCornsSayLess() {
        assertTrue(chitted(1, 8, forecast(1.2, 0)) > chitted(12, 100, forecast(1.2, 0)));
    }

    @Test
    void allOrNoneOnlyBoundIt() {
        assertEquals(
                1.8, new Chitted(100, 100).held(forecast(1.8, 0.1), LOT).steep().chitRatio());
        assertEquals(
                0.4, new Chitted(0, 100).held(forecast(0.4, 0), LOT).steep().chitRatio());
        assertTrue(chitted(0, 100, forecast(1.2, 0)) < 0.05);
    }

    @Test
    void whatHasNotChittedHasNotGrown() {
        assertEquals(
                0, new Chitted(12, 100).held(forecast(1.2, 0.05), LOT).growth().growthRatio());
        assertEquals(
                0.05,
                new Chitted(99, 100).held(forecast(1.2, 0.05), LOT).growth().growthRatio(),
                1e-9);
    }

    /** Chi is the median corn's: half of them chitted at 1, 84 of a hundred one spread later (normal table: 0.8413). */
    @Test
    void theShareTurnsBackIntoItsRatio() {
        assertEquals(1, LOT.chitRatio(0.5), 1e-6);
        assertEquals(Math.exp(MetabolismParameters.CHIT_SPREAD_RATIO), LOT.chitRatio(0.8413447), 1e-5);
    }
}
