package piecewright.desktop.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Duration;
import java.time.Instant;
import org.junit.jupiter.api.Test;

class TimeScaleTest {
    private static final Instant NOON = Instant.parse("2031-03-14T12:00:00Z");
    private static final TimeScale TEN_AN_HOUR = new TimeScale(NOON, 10);

    /** 90 minutes at 10 pixels an hour are 15 pixels. */
    @Test
    void anInstantLiesWhereItsHoursSay() {
        assertEquals(15, TEN_AN_HOUR.x(NOON.plus(Duration.ofMinutes(90))));
        assertEquals(NOON.plus(Duration.ofMinutes(90)), TEN_AN_HOUR.at(15));
        assertEquals(-20, TEN_AN_HOUR.x(NOON.minus(Duration.ofHours(2))));
    }

    @Test
    void fittingFillsTheWidth() {
        TimeScale week = TimeScale.fitting(NOON, NOON.plus(Duration.ofDays(7)), 700);
        assertEquals(700, week.x(NOON.plus(Duration.ofDays(7))), 1e-9);
        assertEquals(0, week.x(NOON));
    }

    @Test
    void zoomingKeepsTheInstantUnderThePointer() {
        Instant under = TEN_AN_HOUR.at(333);
        TimeScale zoomed = TEN_AN_HOUR.zoomed(1.4, 333);
        assertEquals(14, zoomed.pixelsPerHour(), 1e-9);
        assertEquals(333, zoomed.x(under), 0.01);
    }

    @Test
    void zoomingOutAndInAgainComesBack() {
        TimeScale back = TEN_AN_HOUR.zoomed(0.5, 200).zoomed(2, 200);
        assertEquals(10, back.pixelsPerHour(), 1e-9);
        assertEquals(0, back.x(NOON), 0.01);
    }

    @Test
    void panningMovesWhatIsSeenByThatManyPixels() {
        assertEquals(50, TEN_AN_HOUR.panned(50).x(NOON));
        assertEquals(-50, TEN_AN_HOUR.panned(-50).x(NOON));
    }

    @Test
    void nothingBeforeTheStartOrAfterTheEndIsShown() {
        Instant until = NOON.plus(Duration.ofHours(100));
        assertEquals(0, TEN_AN_HOUR.panned(400).keptWithin(NOON, until, 500).x(NOON));
        assertEquals(500, TEN_AN_HOUR.panned(-9000).keptWithin(NOON, until, 500).x(until), 0.01);
        assertEquals(TEN_AN_HOUR.panned(-100), TEN_AN_HOUR.panned(-100).keptWithin(NOON, until, 500));
    }

    @Test
    void anActIsBroughtIntoSightAsLittleAsNeeded() {
        Instant late = NOON.plus(Duration.ofHours(80));
        assertEquals(440, TEN_AN_HOUR.showing(late, 500, 60).x(late), 0.01);
        Instant seen = NOON.plus(Duration.ofHours(20));
        assertEquals(TEN_AN_HOUR, TEN_AN_HOUR.showing(seen, 500, 60));
    }

    @Test
    void aScaleWithoutPixelsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new TimeScale(NOON, 0));
        assertThrows(IllegalArgumentException.class, () -> new TimeScale(NOON, Double.NaN));
    }
}
