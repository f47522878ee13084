package piecewright.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import piecewright.calendar.Attention;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.CssColour;
import piecewright.calendar.Span;

class CalendarPageTest {
    private static Span at(String hour) {
        Instant from = Instant.parse("2027-03-27T" + hour + ":00Z");
        return new Span(from, from.plusSeconds(1800));
    }

    private static CalendarEvent event(String key, String title, String hour) {
        return new CalendarEvent(key, at(hour), title, "", Attention.HANDS_ON, new CssColour("goldenrod"), List.of());
    }

    /** What moves, goes and comes is read from morning to evening, not kind by kind. */
    @Test
    void changesStandInTimeOrderWhateverTheirKind() {
        CalendarChanges changes = new CalendarChanges(
                List.of(new CalendarChanges.Moved(event("a", "Drain 1", "18:00"), at("17:00"))),
                List.of(event("b", "Soak 2", "07:00"), event("c", "Turn 1", "20:00")),
                List.of(new CalendarChanges.Dropped("d", "Soak 1", at("12:00"))),
                0,
                3);
        String said = new CalendarPage(Locale.ENGLISH)
                .changed(new CalendarUpdate("a.ics", ZoneId.of("UTC"), changes, List.of()));
        assertEquals(
                List.of("new: Soak 2", "dropped: Soak 1", "moved: Drain 1", "new: Turn 1"),
                said.lines().map(line -> line.strip().replaceFirst(",.*", "")).toList());
    }
}
