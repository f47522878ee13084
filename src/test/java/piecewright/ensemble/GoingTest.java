package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.plan.PhaseKind;
import piecewright.plan.Simulation.Passing;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.quantity.Moisture;

/** Strides of half an hour through a phase that warms grain by a kelvin an hour and counts how often it is asked. */
class GoingTest {
    private final List<Double> asked = new ArrayList<>();
    private final Stage warming = (start, atHours, stepHours) -> {
        asked.add(atHours * 60);
        return start.withGrainC(start.grainC() + stepHours);
    };
    private final Going going = going();
    private final PieceState start = PieceState.rawGrain(5, Moisture.ofWetBasisPercent(12), 0, 2, 10);

    private Going going() {
        return new Going(new Passing(PhaseKind.GROWTH, Optional.of(warming), Optional.empty()));
    }

    private PieceState walked(PieceState from, int minute, int untilMinute) {
        return going.walked(from, minute, untilMinute, (before, after, at, step) -> {});
    }

    @Test
    void whatWasForeseenIsWalkedWithoutAskingAgain() {
        assertEquals(11.75, going.ahead(start, 60, 165).grainC(), 1e-9);
        assertEquals(List.of(60.0, 90.0, 120.0, 150.0), asked);
        assertEquals(11.5, walked(start, 60, 150).grainC(), 1e-9);
        assertEquals(4, asked.size());
        assertEquals(12, walked(walked(start, 60, 150), 150, 180).grainC(), 1e-9);
    }

    @Test
    void aShorterLookAndALongerOneShareTheirStrides() {
        going.ahead(start, 0, 120);
        going.ahead(start, 0, 90);
        assertEquals(4, asked.size());
        assertEquals(11.25, going.ahead(start, 0, 75).grainC(), 1e-9);
        assertEquals(12.5, going.ahead(start, 0, 150).grainC(), 1e-9);
        assertEquals(List.of(0.0, 30.0, 60.0, 90.0, 60.0, 120.0), asked);
    }

    /** Half a stride ends beside what was foreseen: from there on nothing of it holds. */
    @Test
    void whoStopsBetweenTwoStridesWalksOnFromThere() {
        going.ahead(start, 0, 120);
        PieceState between = walked(start, 0, 45);
        assertEquals(10.75, between.grainC(), 1e-9);
        assertEquals(11.75, walked(between, 45, 105).grainC(), 1e-9);
        assertEquals(11.75, going.ahead(between, 45, 105).grainC(), 1e-9);
        PieceState turned = between.withGrainC(5);
        assertEquals(6, walked(turned, 45, 105).grainC(), 1e-9);
    }

    @Test
    void whereNothingGoesOnNothingChanges() {
        Going nothing = new Going(Passing.none());
        assertSame(start, nothing.ahead(start, 0, 600));
        assertSame(start, nothing.walked(start, 0, 600, (before, after, at, step) -> {}));
    }
}
