package piecewright.process.kiln;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StackDraughtTest {
    /** Worked: 40 cm² of vents, half a metre, 30 K, mean 308 K. */
    @Test
    void aWarmBoxDrawsItsAirThroughItsVents() {
        double flow = StackDraught.airFlowM3PerHour(0.004, 0.5, 30, 308);
        assertEquals(8.4, flow, 0.1);
        assertTrue(flow > 0.8 * StackDraught.VENTED_BOX_M3_PER_HOUR);
    }

    @Test
    void aBoxAsCoolAsTheRoomDrawsNothing() {
        assertEquals(0, StackDraught.airFlowM3PerHour(0.004, 0.5, 0, 293));
    }
}
