package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class HeapCurveTest {
    private static final ModelParameters PARAMETERS = ModelParameters.defaults();

    private final HeapCurve heap =
            HeapCurve.of(PARAMETERS, CouchedDemo.request(), CouchedDemo.plan()).orElseThrow();

    /** The plan followed the same heap by the simulation of the whole piece. */
    @Test
    void theHeapIsAsWarmWhenLookedAtAsThePlanExpects() {
        for (Act act : CouchedDemo.plan().acts()) {
            if (act.kind() != ActKind.CHECK && act.kind() != ActKind.BREAK) continue;
            double pileC = heap.curve().pileC(heap.hours(act.startsAt()));
            assertEquals(act.expect().grainC(), pileC, 0.3, act.id());
        }
    }

    /** Source: the project's couch reference, check runs: every heap that catches peaks between 50.7 and 52.5 °C. */
    @Test
    void itCatchesPeaksAndDropsInThisOrder() {
        Instant catches = heap.rises(45).orElseThrow();
        Instant peaks = heap.instant(heap.curve().peak().atHours());
        assertTrue(heap.packedAt().isBefore(catches) && catches.isBefore(peaks));
        assertEquals(51.6, heap.curve().peak().pileC(), 0.9);
        heap.falls(45).ifPresent(drops -> assertTrue(drops.isAfter(peaks)));
    }

    @Test
    void aPaleMaltHasNone() {
        assertEquals(Optional.empty(), HeapCurve.of(PARAMETERS, DemoPlan.request(), DemoPlan.plan()));
    }
}
