package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static piecewright.process.couch.CouchFixture.MODEL;
import static piecewright.process.couch.CouchFixture.packed;

import java.time.Instant;
import java.time.ZoneId;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import piecewright.house.AirTemperature;
import piecewright.house.Place;
import piecewright.process.Adaptive;
import piecewright.process.Climate;
import piecewright.process.PieceState;
import piecewright.process.Surroundings;

/** Five-minute steps against an adaptive integrator of the same equations, in a room of 16 to 22 °C. */
class CouchAgainstAdaptiveTest {
    private static final Surroundings ROOM = Climate.of(
            new Place("room", new AirTemperature.Daily(16, 22), 0.5),
            ZoneId.of("UTC"),
            Instant.parse("2031-02-01T08:00:00Z"),
            Instant.parse("2031-02-05T08:00:00Z"));

    @ParameterizedTest
    @CsvSource(textBlock = """
            # barleyKg, moisturePercent, pileC, hours
            4.5, 27.5, 21, 33.5
            4.5, 27.5, 21, 72
            4.5, 40, 22, 15
            9, 45, 25, 48
            2.3, 30, 18, 48
            """)
    void couchesAgree(double barleyKg, double moisturePercent, double pileC, double hours) {
        PieceState start = packed(barleyKg, moisturePercent, pileC);
        double[] y = {pileC, 1, start.mass().dryMatterKg(), start.mass().waterKg(), 0};
        double loss = 0.424 * (0.75 + 0.25 * barleyKg / 4.5);
        double[] end = Adaptive.solved(y, 0, hours, (at, now, slope) -> {
            double moisture = now[3] / (now[2] + now[3]);
            double heat = MODEL.heatWPerKgDry(now[0], moisture, now[1]);
            double vapourW = MODEL.evaporationW(now[0]);
            double capacity = now[2] * 1.30 + 4.19 * now[3] + 3;
            slope[0] = 3.6 * (now[2] * heat - loss * (now[0] - ROOM.airC(at)) - vapourW) / capacity;
            slope[1] = -now[1] * MODEL.decayPerHour(now[0]);
            slope[2] = -now[2] * heat * 3.6 / 15600;
            slope[3] = -0.6 * slope[2] - vapourW * 3.6 / 2430;
            slope[4] = CouchModel.indexPerHour(now[0], moisture);
        });
        PieceState state = new HotCouch(MODEL, ROOM).run(start, 0, hours);
        assertEquals(end[0], state.grainC(), 0.05);
        assertEquals(100 * end[3] / (end[2] + end[3]), state.mass().moisture().wetBasisPercent(), 0.02);
        assertEquals(end[1], state.couch().capacityRatio(), 1e-3);
        assertEquals(end[4], state.couch().indexHours(), 0.02);
        assertEquals(end[2], state.mass().dryMatterKg(), 1e-4);
    }
}
