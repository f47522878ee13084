package piecewright.process.steep;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Duration;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import piecewright.house.AirTemperature;
import piecewright.house.Place;
import piecewright.process.Adaptive;
import piecewright.process.Climate;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;

/** Five-minute steps against an adaptive integrator of the same equations, in a garage of 6 to 19 °C. */
class SteepAgainstAdaptiveTest {
    private static final Surroundings GARAGE = Climate.of(
            new Place("garage", new AirTemperature.Daily(6, 19), 0.75),
            ZoneId.of("UTC"),
            SteepFixture.ORIGIN,
            SteepFixture.ORIGIN.plus(Duration.ofDays(4)));
    private static final Metabolism ALIVE = new Metabolism(0.96, 1, MetabolismParameters.defaults());
    private static final SteepModel MODEL = new SteepModel(
            1.3,
            0,
            SteepParameters.defaults()
                    .withUptake(SteepParameters.Uptake.defaults().withEvaporationPerHour(0.0005)));

    private static final int C = 0;
    private static final int W = 1;
    private static final int T = 2;
    private static final int CHIT = 3;
    private static final int SOAK = 4;
    private static final int DRY = 5;
    private static final int WATER = 6;
    private static final int GROWTH = 7;

    private static double[] unknowns(PieceState s) {
        return new double[] {
            s.steep().coreRatio(),
            s.steep().outerRatio(),
            s.grainC(),
            s.steep().chitRatio(),
            s.steep().soakHours(),
            s.mass().dryMatterKg(),
            s.mass().waterKg(),
            s.growth().growthRatio()
        };
    }

    private static void breathe(double[] now, double[] slope) {
        double perHour = now[DRY] * ALIVE.steepRespiredPerHour(now[T], now[WATER] / (now[WATER] + now[DRY]));
        slope[DRY] -= perHour;
        slope[WATER] += 0.6 * perHour;
        slope[CHIT] = ALIVE.chitPerHour(now[T]);
    }

    private static void assertClose(double[] expected, PieceState state) {
        assertEquals(expected[T], state.grainC(), 0.05);
        double percent = 100 * expected[WATER] / (expected[WATER] + expected[DRY]);
        assertEquals(percent, state.mass().moisture().wetBasisPercent(), 0.02);
        assertEquals(expected[C], state.steep().coreRatio(), 2e-4);
        assertEquals(expected[CHIT], state.steep().chitRatio(), 1e-3);
        assertEquals(expected[GROWTH], state.growth().growthRatio(), 2e-4);
        assertEquals(expected[DRY], state.mass().dryMatterKg(), 1e-4);
    }

    @Test
    void soaksAgree() {
        Bath bath = new Bath(11, 9);
        Immersion soak = new Immersion(MODEL, ALIVE, GARAGE, Standing.BUCKET, bath);
        PieceState start = soak.entered(SteepFixture.raw(12, 15));
        double initialKg = start.mass().initialDryMatterKg();
        double[] end = Adaptive.solved(unknowns(start), 3, 13, (hours, now, slope) -> {
            double theta = MODEL.theta(now[T]);
            double lack = MODEL.saturationCoreRatio() - now[C];
            slope[C] = 1.3 * 0.0363 * theta * MODEL.chitGain(now[CHIT]) * lack * lack;
            slope[W] = 0;
            double volumeL = bath.waterL() + 0.74 * now[DRY] + now[WATER];
            slope[T] = (GARAGE.airC(hours) - now[T]) / (0.75 * volumeL);
            slope[SOAK] = theta;
            slope[DRY] = -initialKg * 0.009 / 12 * Math.exp(-now[SOAK] / 12) * theta;
            slope[WATER] = initialKg * slope[C];
            breathe(now, slope);
        });
        PieceState state = start;
        for (int i = 0; i < 120; i++) state = soak.step(state, 3 + i / 12.0, 1 / 12.0);
        assertClose(end, state);
    }

    @Test
    void restsAgreeAcrossTheChit() {
        AirRest rest = new AirRest(MODEL, ALIVE, GARAGE, Standing.BUCKET);
        PieceState raw = SteepFixture.raw(12, 12);
        Immersion soak = new Immersion(MODEL, ALIVE, GARAGE, Standing.BUCKET, new Bath(11, 9));
        PieceState start = soak.run(raw, 0, 9);
        double initialKg = start.mass().initialDryMatterKg();
        double[] end = Adaptive.solved(unknowns(start), 9, 69, (hours, now, slope) -> {
            double drinks = MODEL.restPerHour(now[C], now[W], now[T], now[CHIT]);
            slope[C] = drinks;
            double dries = now[W] > 0 ? 0.0005 : 0;
            slope[W] = -drinks - dries;
            slope[T] = (GARAGE.airC(hours) - now[T]) / (0.75 * (0.74 * now[DRY] + now[WATER]));
            slope[SOAK] = 0;
            slope[DRY] = 0;
            slope[WATER] = -initialKg * dries;
            slope[GROWTH] = now[CHIT] >= 1 ? ALIVE.growthPerHour(now[T], now[WATER] / (now[WATER] + now[DRY])) : 0;
            breathe(now, slope);
        });
        PieceState state = rest.run(start, 9, 69);
        assertClose(end, state);
        org.junit.jupiter.api.Assertions.assertTrue(state.growth().growthRatio() > 0.01, "the rest passes the chit");
    }
}
