package piecewright.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What an export will do to the calendar, for showing it first.
 *
 * @param added new or brought back
 * @param reworded same times, other words or alarms; count of events
 * @param unchanged count of events
 */
public record CalendarChanges(
        List<Moved> moved, List<CalendarEvent> added, List<Dropped> dropped, int reworded, int unchanged) {
    public CalendarChanges {
        moved = List.copyOf(moved);
        added = List.copyOf(added);
        dropped = List.copyOf(dropped);
    }

    /** An event whose times change. */
    public record Moved(CalendarEvent event, Span from) {
        public Span to() {
            return event.span();
        }
    }

    /** An event that goes, and where it last stood. */
    public record Dropped(String key, String summary, Span span) {}

    /** Whether the calendar would stay as it is. */
    public boolean isEmpty() {
        return moved.isEmpty() && added.isEmpty() && dropped.isEmpty() && reworded == 0;
    }

    /** All of these as one. */
    public static CalendarChanges together(List<CalendarChanges> parts) {
        return new CalendarChanges(
                parts.stream().flatMap(part -> part.moved().stream()).toList(),
                parts.stream().flatMap(part -> part.added().stream()).toList(),
                parts.stream().flatMap(part -> part.dropped().stream()).toList(),
                parts.stream().mapToInt(CalendarChanges::reworded).sum(),
                parts.stream().mapToInt(CalendarChanges::unchanged).sum());
    }

    static CalendarChanges between(Map<String, LedgerEntry> before, List<CalendarEvent> now) {
        List<Moved> moved = new ArrayList<>();
        List<CalendarEvent> added = new ArrayList<>();
        int reworded = 0;
        int unchanged = 0;
        for (CalendarEvent event : now) {
            LedgerEntry entry = before.get(event.key());
            if (entry == null || entry.state() == EventStatus.CANCELLED) added.add(event);
            else if (!entry.lastSpan().equals(event.span())) moved.add(new Moved(event, entry.lastSpan()));
            else if (entry.says(event)) unchanged++;
            else reworded++;
        }
        return new CalendarChanges(moved, added, dropped(before, now), reworded, unchanged);
    }

    private static List<Dropped> dropped(Map<String, LedgerEntry> before, List<CalendarEvent> now) {
        Set<String> kept = now.stream().map(CalendarEvent::key).collect(Collectors.toSet());
        return before.entrySet().stream()
                .filter(entry -> entry.getValue().state() == EventStatus.CONFIRMED && !kept.contains(entry.getKey()))
                .map(entry -> new Dropped(
                        entry.getKey(),
                        entry.getValue().lastSummary(),
                        entry.getValue().lastSpan()))
                .toList();
    }
}
