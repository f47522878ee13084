package piecewright.calendar;

import java.util.Objects;
import java.util.UUID;

/** An event ready to be written: it has its UID, its stamp and its status. */
public record DatedEvent(UUID uid, Stamp stamp, EventStatus status, CalendarEvent event) {
    public DatedEvent {
        Objects.requireNonNull(uid);
        Objects.requireNonNull(stamp);
        Objects.requireNonNull(status);
        Objects.requireNonNull(event);
    }
}
