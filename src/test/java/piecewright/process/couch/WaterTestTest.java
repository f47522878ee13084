package piecewright.process.couch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class WaterTestTest {
    /** Check 21 of the couch reference: 5 kg of water, 23.95 kJ/K, 50 to 40.5 °C in 6 h at 20 °C is 0.424 W/K. */
    @Test
    void theBoxOfTheReferenceIsFoundAgain() {
        assertEquals(0.424, new WaterTest(5, 50, 40.5, 20, 6).lossWPerK(), 0.005);
    }

    @Test
    void waterThatDidNotCoolOrCooledBelowTheRoomTellsNothing() {
        assertThrows(IllegalArgumentException.class, () -> new WaterTest(5, 50, 50, 20, 6));
        assertThrows(IllegalArgumentException.class, () -> new WaterTest(5, 50, 19, 20, 6));
    }
}
