package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import piecewright.plan.Availability;
import piecewright.plan.Households;

class MomentsTest {
    /** Monday 3 March 2031; somebody is there 06:00 to 07:00 and 17:45 to 22:30. */
    private static final Instant MONDAY =
            LocalDate.of(2031, 3, 3).atStartOfDay(ZoneId.of("Europe/Berlin")).toInstant();

    private final Moments moments =
            new Moments(Availability.of(Households.garage(9, 13), MONDAY, MONDAY.plusSeconds(2 * 86_400)), MONDAY);

    @Test
    void nextIsTheFirstMomentWithRoomForTheWork() {
        assertEquals(6 * 60, moments.next(0, 60));
        assertEquals(6 * 60 + 30, moments.next(6 * 60 + 30, 30));
        assertEquals(17 * 60 + 45, moments.next(6 * 60 + 31, 30));
        assertEquals(Moments.NEVER, moments.next(96 * 60, 30));
    }

    @Test
    void lastIsTheLatestInASpan() {
        assertEquals(7 * 60 - 10, moments.last(0, 12 * 60, 10));
        assertEquals(18 * 60, moments.last(0, 18 * 60, 10));
        assertEquals(Moments.NEVER, moments.last(7 * 60, 17 * 60, 10));
    }

    @Test
    void whoMustStayNeedsALongStretch() {
        assertEquals(17 * 60 + 45, moments.nextAttended(0, 10, 240));
        assertEquals(22 * 60 + 30, moments.attendedUntil(18 * 60));
        assertEquals(12 * 60, moments.attendedUntil(12 * 60), "nobody is there");
        assertEquals(Moments.NEVER, moments.nextAttended(0, 10, 300));
    }
}
