package piecewright.process;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Instant;
import org.junit.jupiter.api.Test;

class SurroundingsTest {
    private static final Instant ORIGIN = Instant.parse("2031-02-01T00:00:00Z");

    @Test
    void warmerAirRisesLinearlyFromDayToDayAndStaysSo() {
        Surroundings room = Surroundings.constant(ORIGIN, 14, 0.6).warmer(new double[] {1, 3});
        assertEquals(15, room.airC(-5), 1e-12);
        assertEquals(15.5, room.airC(6), 1e-12);
        assertEquals(17, room.airC(24), 1e-12);
        assertEquals(17, room.airC(240), 1e-12);
        assertEquals(0.6, room.humidityFraction());
        assertThrows(IllegalArgumentException.class, () -> room.warmer(new double[0]));
    }
}
