package piecewright.desktop.house;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import piecewright.house.LocalHours;

class PaintedWeekTest {
    private static final LocalHours MORNING = new LocalHours(LocalTime.of(6, 0), LocalTime.of(7, 0));
    private static final LocalHours EVENING = new LocalHours(LocalTime.of(17, 30), LocalTime.MIDNIGHT);

    @Test
    void hoursComeBackAsTheyWere() {
        PaintedWeek week = PaintedWeek.of(Map.of(DayOfWeek.MONDAY, List.of(MORNING, EVENING)));
        assertEquals(List.of(MORNING, EVENING), week.hours(DayOfWeek.MONDAY));
        assertEquals(List.of(), week.hours(DayOfWeek.TUESDAY));
    }

    @Test
    void hoursThatDoNotFillAQuarterLoseItAndNeverGainIt() {
        LocalHours odd = new LocalHours(LocalTime.of(6, 5), LocalTime.of(6, 50));
        assertEquals(
                List.of(new LocalHours(LocalTime.of(6, 15), LocalTime.of(6, 45))),
                PaintedWeek.of(Map.of(DayOfWeek.SUNDAY, List.of(odd))).hours(DayOfWeek.SUNDAY));
    }

    @Test
    void aStrokeChangesOneDayAndLeavesTheWeekBeforeAsItWas() {
        PaintedWeek before = PaintedWeek.of(Map.of(DayOfWeek.MONDAY, List.of(MORNING)));
        PaintedWeek after = before.freed(DayOfWeek.MONDAY, 28, 32);
        assertEquals(List.of(new LocalHours(LocalTime.of(6, 0), LocalTime.of(8, 0))), after.hours(DayOfWeek.MONDAY));
        assertEquals(List.of(MORNING), before.hours(DayOfWeek.MONDAY));
        assertEquals(before, after.taken(DayOfWeek.MONDAY, 28, 32));
        assertNotEquals(before, after);
    }

    /** Monday 7:00 to Tuesday 6:00 are 23 hours, 92 quarters, counted where they begin. */
    @Test
    void theLongestStretchRunsIntoTheNextDay() {
        PaintedWeek week =
                PaintedWeek.of(Map.of(DayOfWeek.MONDAY, List.of(MORNING), DayOfWeek.TUESDAY, List.of(MORNING)));
        assertEquals(92, week.longestAway(DayOfWeek.MONDAY));
    }
}
