package piecewright.process.steep;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import piecewright.quantity.Moisture;

class TestSteepTest {
    private static final SteepModel MODEL = new SteepModel(1, 0, SteepParameters.defaults());
    private static final Moisture RAW = Moisture.ofWetBasisPercent(12);

    /** Worked example of the steeping reference: 12 %, 8 h at 15 °C, drained at 33.5 % gives m = 1.198. */
    @Test
    void oneWeighingGivesTheRateOfTheWorkedExample() {
        double drainedG = 88 / (1 - 0.335);
        assertEquals(1.198, new TestSteep(100, drainedG, 8, 15).rateRatio(RAW, MODEL), 0.001);
    }

    @Test
    void aHeavierNetDrankFasterAndWarmerWaterExplainsPartOfIt() {
        double usual = new TestSteep(100, 132, 8, 15).rateRatio(RAW, MODEL);
        assertTrue(new TestSteep(100, 134, 8, 15).rateRatio(RAW, MODEL) > usual);
        assertTrue(new TestSteep(100, 132, 8, 18).rateRatio(RAW, MODEL) < usual);
    }

    @Test
    void agreesWithTheForwardModel() {
        SteepModel fast = new SteepModel(1.7, 0, SteepParameters.defaults());
        double core = fast.coreAfterSoak(RAW.dryBasisRatio(), 7 * fast.theta(13));
        double drainedG = 88 * (1 + core + fast.filledOuterRatio());
        assertEquals(1.7, new TestSteep(100, drainedG, 7, 13).rateRatio(RAW, MODEL), 1e-9);
    }

    @Test
    void impossibleWeighingsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TestSteep(100, 99, 8, 15));
        assertThrows(IllegalArgumentException.class, () -> new TestSteep(100, 130, 0, 15));
    }
}
