package piecewright.app;

import java.time.Instant;
import java.util.Objects;
import piecewright.store.StyleLibrary;

/** What batches are read with for their calendars: the styles there are, and until when their journals count. */
public record CalendarReading(StyleLibrary library, Instant now) {
    public CalendarReading {
        Objects.requireNonNull(library);
        Objects.requireNonNull(now);
    }
}
