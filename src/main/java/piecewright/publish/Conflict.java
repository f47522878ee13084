package piecewright.publish;

import java.util.Objects;
import java.util.Optional;
import java.util.UUID;
import piecewright.calendar.CalendarEvent;

/**
 * An event we left alone because somebody else had a hand in it.
 *
 * @param wanted what we would have written; empty if we would have removed it
 * @param seen mark of the copy we found, to be handed back with a {@link Decision}
 */
public record Conflict(UUID uid, String key, Kind kind, Optional<CalendarEvent> wanted, String seen) {
    public Conflict {
        Objects.requireNonNull(uid);
        Objects.requireNonNull(key);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(wanted);
        Objects.requireNonNull(seen);
    }

    /** What happened to it. */
    public enum Kind {
        /** The copy there is not the one we left. */
        EDITED,
        /** What lies at its place is not ours; cannot be overwritten. */
        NOT_OURS,
        /** The collection holds its UID under another name, as after an import by hand; cannot be overwritten. */
        ELSEWHERE
    }
}
