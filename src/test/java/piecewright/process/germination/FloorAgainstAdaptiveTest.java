package piecewright.process.germination;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static piecewright.process.germination.FloorFixture.ALIVE;
import static piecewright.process.germination.FloorFixture.PARAMETERS;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.AirTemperature;
import piecewright.house.Place;
import piecewright.process.Adaptive;
import piecewright.process.Climate;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.process.Stage;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;

/** Five-minute steps against an adaptive integrator of the same equations, in a garage of 6 to 19 °C. */
class FloorAgainstAdaptiveTest {
    private static final Surroundings GARAGE = Climate.of(
            new Place("garage", new AirTemperature.Daily(6, 19), 0.6),
            ZoneId.of("UTC"),
            Instant.parse("2031-02-01T08:00:00Z"),
            Instant.parse("2031-02-07T08:00:00Z"));

    @ParameterizedTest
    @CsvSource(textBlock = """
            # areaM2, exposure, startChit, hours
            0.15, 0.12, 0.9, 96
            0.40, 0.35, 1.0, 96
            0.80, 1.0, 1.5, 48
            """)
    void bedsAgree(double areaM2, double exposureRatio, double startChit, double hours) {
        PieceState start = FloorFixture.steeped(45, 16);
        SteepState steep = start.steep();
        start = start.withSteep(new SteepState(steep.coreRatio(), steep.outerRatio(), 22, 3, startChit));
        double[] y = {start.grainC(), start.mass().waterKg(), start.mass().dryMatterKg(), startChit, 0, 0};
        double[] end = Adaptive.solved(y, 0, hours, (at, now, slope) -> {
            double wetKg = now[1] + now[2];
            double heat = ALIVE.heatWPerKgDry(now[0], now[1] / wetKg, now[4]);
            double airC = GARAGE.airC(at);
            double a = now[2] / areaM2;
            double loss = 1 / (1 / 20.0 + wetKg / (480 * areaM2) / 1.2);
            slope[0] = 3.6 * (heat * a - loss * (now[0] - airC)) / (a * (1.3 + 4.19 * now[1] / now[2]));
            double deficitKPa = Psychrometrics.vapourPressureDeficitKPa(airC, 0.6);
            double laidM = now[2] / (0.54 * 480 * areaM2);
            double evaporates = now[2] * exposureRatio * 0.0301 * deficitKPa * 0.025 / laidM * (now[1] / now[2] - 0.13);
            double breathes = now[2] * heat * 3.6 / 15600;
            slope[1] = 0.6 * breathes - evaporates;
            slope[2] = -breathes;
            slope[3] = ALIVE.chitPerHour(now[0]);
            slope[4] = now[3] >= 1 ? ALIVE.growthPerHour(now[0], now[1] / wetKg) : 0;
            slope[5] = now[3] >= 1 && now[1] / wetKg > 0.30 ? ALIVE.rootletDaysPerHour(now[0]) : 0;
        });
        PieceState state = stage(areaM2, exposureRatio).run(start, 0, hours);
        assertEquals(end[0], state.grainC(), 0.05);
        assertEquals(100 * end[1] / (end[1] + end[2]), state.mass().moisture().wetBasisPercent(), 0.02);
        assertEquals(end[2], state.mass().dryMatterKg(), 1e-4);
        assertEquals(end[3], state.steep().chitRatio(), 5e-4);
        assertEquals(end[4], state.growth().growthRatio(), 5e-4);
        assertEquals(end[5], state.growth().rootletDays(), 5e-3);
    }

    private static Stage stage(double areaM2, double exposureRatio) {
        if (exposureRatio == 1) return new WitherBed(ALIVE, PARAMETERS, GARAGE, areaM2);
        Cover cover = exposureRatio == 0.12 ? Cover.DAMP_CLOTH : Cover.UNCOVERED;
        return new FloorBed(ALIVE, PARAMETERS, GARAGE, areaM2, cover);
    }
}
