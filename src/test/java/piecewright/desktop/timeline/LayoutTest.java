package piecewright.desktop.timeline;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import piecewright.plan.Availability.Stretch;

/** Where things lie on the timeline, without a toolkit. */
class LayoutTest {
    private static final Instant NOON = Instant.parse("2031-03-14T12:00:00Z");

    @Test
    void markersThatWouldCoverEachOtherAreStacked() {
        assertArrayEquals(new int[] {0, 1, 0, 0}, MarkerRows.of(new double[] {0, 10, 30, 60}, 24, 3));
        assertArrayEquals(new int[] {0, 1, 2, 0}, MarkerRows.of(new double[] {0, 1, 2, 3}, 24, 3));
    }

    /** The fold lies at three fifths of the height; half way between 0 and 20 °C is half of that. */
    @Test
    void heatIsLinearBelowTheFoldAndSqueezedAboveIt() {
        FoldedScale scale = new FoldedScale(0, 100);
        assertEquals(0.3, scale.heightRatio(10), 1e-9);
        assertEquals(0.6, scale.heightRatio(20), 1e-9);
        assertEquals(0.8, scale.heightRatio(60), 1e-9);
        assertEquals(1, scale.heightRatio(100), 1e-9);
    }

    @Test
    void moistureIsTheTallestLaneAndNoLaneOverlapsAnother() {
        for (double height : new double[] {320, 480, 700, 1200}) {
            Lanes lanes = Lanes.of(height, 14, 0);
            assertTrue(lanes.moisture().height() > lanes.heat().height(), "at " + height);
            assertTrue(lanes.heat().height() > lanes.growth().height(), "at " + height);
            assertEquals(lanes.moisture().bottom(), lanes.heat().top());
            assertEquals(lanes.growth().bottom(), lanes.colour().top());
        }
    }

    @Test
    void otherPiecesTakeTheirRowsFromTheLanesBelowThem() {
        Lanes alone = Lanes.of(700, 14, 0);
        Lanes beside = Lanes.of(700, 14, 2);
        assertEquals(0, alone.others().height());
        assertEquals(48, beside.others().height());
        assertEquals(alone.bottom(), beside.bottom(), 1);
        assertEquals(beside.acts().bottom(), beside.others().top());
        assertEquals(beside.others().bottom(), beside.ribbon().top());
    }

    @Test
    void aTraceIsReadBetweenItsPointsAndNotOutsideThem() {
        Trace trace =
                new Trace(List.of(new Trace.Point(NOON, 10), new Trace.Point(NOON.plus(Duration.ofHours(2)), 20)));
        assertEquals(OptionalDouble.of(15), trace.at(NOON.plus(Duration.ofHours(1))));
        assertEquals(OptionalDouble.of(20), trace.at(NOON.plus(Duration.ofHours(2))));
        assertEquals(OptionalDouble.empty(), trace.at(NOON.minusSeconds(1)));
        assertEquals(OptionalDouble.empty(), trace.at(NOON.plus(Duration.ofHours(3))));
        assertEquals(OptionalDouble.empty(), Trace.none().at(NOON));
    }

    @Test
    void hoursAwayAreWhatIsLeftOfTheDayWithoutPresenceAndNight() {
        Stretch day = new Stretch(NOON, NOON.plus(Duration.ofHours(10)));
        Stretch there = new Stretch(NOON.plus(Duration.ofHours(2)), NOON.plus(Duration.ofHours(4)));
        assertEquals(
                List.of(new Stretch(NOON, there.from()), new Stretch(there.until(), day.until())),
                DayShades.without(List.of(day), List.of(there)));
        assertEquals(List.of(), DayShades.without(List.of(there), List.of(day)));
        assertEquals(List.of(there), DayShades.without(List.of(there), List.of()));
    }
}
