package piecewright.publish;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import piecewright.calendar.CalendarEvent;
import piecewright.calendar.PublishedCopies;

/** How a publication went. Whatever it was, {@link #copies()} is to be kept. */
public sealed interface PublishResult {
    /** What lies on the server now because of us. */
    PublishedCopies copies();

    /**
     * Everything was done but for the conflicts, which were left alone.
     *
     * @param restored what was missing there and was made again
     */
    record Published(PublishedCopies copies, Counts counts, List<CalendarEvent> restored, List<Conflict> conflicts)
            implements PublishResult {
        public Published {
            Objects.requireNonNull(copies);
            Objects.requireNonNull(counts);
            restored = List.copyOf(restored);
            conflicts = List.copyOf(conflicts);
        }

        /** This and the publication just before it as one: what was done in both, and how things stand now. */
        public Published after(Published before) {
            Counts both = new Counts(
                    before.counts.created + counts.created,
                    before.counts.updated + counts.updated,
                    before.counts.removed + counts.removed,
                    before.counts.unchanged);
            List<CalendarEvent> again = new ArrayList<>(before.restored);
            again.addAll(restored);
            return new Published(copies, both, again, conflicts);
        }
    }

    /** No answer, or it broke off; nothing is lost, try again later. */
    record Offline(PublishedCopies copies, String reason) implements PublishResult {}

    /** The server said no: 401 and 403 mean name or password, 404 the address, 507 no room. */
    record Refused(PublishedCopies copies, int status) implements PublishResult {}

    /** There is something at the address, but no calendar for events. */
    record NotACalendar(PublishedCopies copies) implements PublishResult {}

    /** How many events. */
    record Counts(int created, int updated, int removed, int unchanged) {}

    default <T> T match(
            Function<Published, T> published,
            Function<Offline, T> offline,
            Function<Refused, T> refused,
            Function<NotACalendar, T> notACalendar) {
        if (this instanceof Published done) return published.apply(done);
        if (this instanceof Offline gone) return offline.apply(gone);
        return this instanceof Refused no ? refused.apply(no) : notACalendar.apply((NotACalendar) this);
    }
}
