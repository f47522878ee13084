package piecewright.calendar;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

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
     * One event there.
     *
     * @param etag the server's mark of the copy last known to be ours; empty if it must be looked at before a change
     * @param sent fingerprint of what we last wanted it to say
     * @param stored fingerprint of what the server made of it
     */
    public record Copy(String key, Optional<String> etag, String sent, String stored) {
        public Copy {
            Objects.requireNonNull(key);
            Objects.requireNonNull(etag);
            Objects.requireNonNull(sent);
            Objects.requireNonNull(stored);
        }
    }
}
