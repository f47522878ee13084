package piecewright.publish;

import java.net.URI;
import java.util.Optional;
import java.util.UUID;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.EventPrint;
import piecewright.calendar.PublishedCopies.Copy;

/** One event as it shall be on the server: where, in which octets, and their print. */
record Wanted(DatedEvent dated, URI uri, byte[] octets, EventPrint print) {
    static Wanted of(DatedEvent dated, URI uri, byte[] octets) {
        EventPrint print = EventPrint.of(octets).orElseThrow();
        return new Wanted(dated, uri, octets, print);
    }

    UUID uid() {
        return dated.uid();
    }

    CalendarEvent event() {
        return dated.event();
    }

    /** Our record of it once it is there. */
    Copy copy(Optional<String> etag, String stored) {
        return new Copy(event().key(), event().summary(), event().span(), etag, print.content(), stored);
    }

    /** Whether the stored event carries both our UID and our act. */
    boolean isTheAct(EventPrint there) {
        return hasTheUid(there) && there.key().equals(event().key());
    }

    boolean hasTheUid(EventPrint there) {
        return there.uid().equals(uid().toString());
    }
}
