package piecewright.calendar;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.UUID;

/**
 * All events of one batch.
 *
 * @param batch random when the batch was begun, its own for a copy; every UID derives from it
 * @param endsAt when the batch is over; up to then dropped acts stay in one-off files as cancelled
 * @param events keys all different
 */
public record BatchEvents(UUID batch, Instant endsAt, List<CalendarEvent> events) {
    public BatchEvents {
        Objects.requireNonNull(batch);
        Objects.requireNonNull(endsAt);
        events = List.copyOf(events);
        Set<String> keys = new HashSet<>();
        for (CalendarEvent event : events) {
            if (!keys.add(event.key())) throw new IllegalArgumentException("key occurs twice: " + event.key());
        }
    }
}
