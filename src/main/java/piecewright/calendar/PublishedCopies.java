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
            if (copy == null) added.add(dated.event());
            else if (!copy.span().equals(dated.event().span())) moved.add(new Moved(dated.event(), copy.span()));
            else if (copy.says(writer.resource(dated))) unchanged++;
            else reworded++;
        }
        List<Dropped> dropped = left.values().stream()
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
     * @param sent fingerprint of what we last wanted it to say
     * @param stored fingerprint of what the server made of it
     */
    public record Copy(String key, String title, Span span, Optional<String> etag, String sent, String stored) {
        public Copy {
            Objects.requireNonNull(key);
            Objects.requireNonNull(title);
            Objects.requireNonNull(span);
            Objects.requireNonNull(etag);
            Objects.requireNonNull(sent);
            Objects.requireNonNull(stored);
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
