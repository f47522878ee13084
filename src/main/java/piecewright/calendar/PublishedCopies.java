package piecewright.calendar;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;
import piecewright.calendar.CalendarChanges.Dropped;
import piecewright.calendar.CalendarChanges.Moved;

/**
 * What lies in one collection of a calendar server because we put it there. To be kept after every publication, even
 * one that broke off: what it names may be changed or removed by us, nothing else.
 *
 * @param collection its URL
 * @param copies by UID
 */
public record PublishedCopies(String collection, SortedMap<UUID, Copy> copies) {
    public PublishedCopies {
        Objects.requireNonNull(collection);
        copies = Collections.unmodifiableSortedMap(new TreeMap<>(copies));
    }

    /** Nothing published there yet. */
    public static PublishedCopies none(String collection) {
        return new PublishedCopies(collection, new TreeMap<>());
    }

    public PublishedCopies with(UUID uid, Copy copy) {
        Map<UUID, Copy> changed = new TreeMap<>(copies);
        changed.put(uid, copy);
        return new PublishedCopies(collection, new TreeMap<>(changed));
    }

    public PublishedCopies without(UUID uid) {
        SortedMap<UUID, Copy> changed = new TreeMap<>(copies);
        changed.remove(uid);
        return new PublishedCopies(collection, changed);
    }

    /**
     * These with a note of what is about to be sent; kept before anything is, so that after a crash in the middle what was
     * sent is known for ours and not taken for somebody's edit.
     */
    public PublishedCopies intending(List<DatedEvent> events) {
        IcsWriter writer = new IcsWriter();
        Map<UUID, Copy> noted = new TreeMap<>(copies);
        for (DatedEvent dated : events) {
            String print = EventPrint.of(writer.resource(dated)).orElseThrow().content();
            Copy copy = noted.get(dated.uid());
            if (copy == null) noted.put(dated.uid(), Copy.about(dated.event(), print));
            else if (!copy.sent().equals(print)) noted.put(dated.uid(), copy.withSending(print));
        }
        return new PublishedCopies(collection, new TreeMap<>(noted));
    }

    /** What publishing these events would change, as far as can be told without asking the server. */
    public CalendarChanges changesTo(List<DatedEvent> events) {
        IcsWriter writer = new IcsWriter();
        List<Moved> moved = new ArrayList<>();
        List<CalendarEvent> added = new ArrayList<>();
        Map<UUID, Copy> left = new TreeMap<>(copies);
        int reworded = 0;
        int unchanged = 0;
        for (DatedEvent dated : events) {
            Copy copy = left.remove(dated.uid());
            if (copy == null || copy.sent().isEmpty()) added.add(dated.event());
            else if (!copy.span().equals(dated.event().span())) moved.add(new Moved(dated.event(), copy.span()));
            else if (copy.says(writer.resource(dated))) unchanged++;
            else reworded++;
        }
        List<Dropped> dropped = left.values().stream()
                .filter(copy -> !copy.sent().isEmpty())
                .map(copy -> new Dropped(copy.key(), copy.title(), copy.span()))
                .toList();
        return new CalendarChanges(moved, added, dropped, reworded, unchanged);
    }

    /**
     * One event there.
     *
     * @param title what we last wanted it to be called
     * @param span and when
     * @param etag the server's mark of the copy last known to be ours; empty if it must be looked at before a change
     * @param sent fingerprint of what we last wanted it to say; empty if it was never known to be there
     * @param stored fingerprint of what the server made of it; empty if the person keeps it in their own way
     * @param sending fingerprint of what was last on its way there without an answer
     */
    public record Copy(
            String key,
            String title,
            Span span,
            Optional<String> etag,
            String sent,
            String stored,
            Optional<String> sending) {
        /** A copy with nothing on its way. */
        public Copy(String key, String title, Span span, Optional<String> etag, String sent, String stored) {
            this(key, title, span, etag, sent, stored, Optional.empty());
        }

        public Copy {
            Objects.requireNonNull(sending);
            Objects.requireNonNull(key);
            Objects.requireNonNull(title);
            Objects.requireNonNull(span);
            Objects.requireNonNull(etag);
            Objects.requireNonNull(sent);
            Objects.requireNonNull(stored);
        }

        private static Copy about(CalendarEvent event, String print) {
            return new Copy(event.key(), event.summary(), event.span(), Optional.empty(), "", "", Optional.of(print));
        }

        private Copy withSending(String print) {
            return new Copy(key, title, span, etag, sent, stored, Optional.of(print));
        }

        /** Whether the person was left their own copy, or none. */
        public boolean isTheirs() {
            return stored.isEmpty() && !sent.isEmpty();
        }

        /** Whether a copy that says this is as we left it. */
        public boolean isOurs(String content) {
            return !stored.isEmpty() && stored.equals(content)
                    || sending.filter(content::equals).isPresent();
        }

        private boolean says(byte[] resource) {
            return EventPrint.of(resource)
                    .filter(print -> print.content().equals(sent))
                    .isPresent();
        }

        /** The same event, of which the server made this. */
        public Copy withStored(Optional<String> changedEtag, String changedStored) {
            return new Copy(key, title, span, changedEtag, sent, changedStored);
        }
    }
}
