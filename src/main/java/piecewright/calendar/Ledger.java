package piecewright.calendar;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.UUID;

/**
 * What has been exported of one batch: by key, the UID and stamp each event carries and what it last said. Immutable;
 * keep the ledger of a {@link Revision} only after its file is in place.
 *
 * <p>UIDs follow from batch and key alone, so even a lost ledger gives every act its old UID back.
 */
public record Ledger(UUID batch, SortedMap<String, LedgerEntry> entries) {
    public Ledger {
        Objects.requireNonNull(batch);
        entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
        for (Map.Entry<String, LedgerEntry> entry : entries.entrySet()) {
            if (!CalendarEvent.isKey(entry.getKey())) {
                throw new IllegalArgumentException("key must be 1 to 120 of A-Za-z0-9._-: " + entry.getKey());
            }
            if (!entry.getValue().uid().equals(NamedUuid.of(batch, entry.getKey()))) {
                throw new IllegalArgumentException("uid must follow from batch and key: " + entry.getKey());
            }
        }
    }

    /** Nothing exported yet. A copy of a batch begins with this under a new random UUID and so shares no UID. */
    public static Ledger startedFor(UUID batch) {
        return new Ledger(batch, new TreeMap<>());
    }

    /** The UID of this key, whether or not it was ever exported. */
    public UUID uidOf(String key) {
        return NamedUuid.of(batch, key);
    }

    /** What to write for these events at this moment; events that did not change keep their stamps. */
    public Revision next(BatchEvents now, Instant at) {
        mustBeOurs(now);
        Instant seconds = at.truncatedTo(ChronoUnit.SECONDS);
        SortedMap<String, LedgerEntry> after = new TreeMap<>();
        List<DatedEvent> confirmed = new ArrayList<>();
        for (CalendarEvent event : now.events()) {
            LedgerEntry before = entries.get(event.key());
            LedgerEntry entry = before == null
                    ? LedgerEntry.first(uidOf(event.key()), event, seconds)
                    : before.followedBy(event, seconds);
            after.put(event.key(), entry);
            confirmed.add(new DatedEvent(entry.uid(), entry.stamp(), EventStatus.CONFIRMED, event));
        }
        List<DatedEvent> cancelled = new ArrayList<>();
        entries.forEach((key, before) -> {
            if (after.containsKey(key)) return;
            LedgerEntry entry = before.cancelled(key, seconds);
            after.put(key, entry);
            cancelled.add(new DatedEvent(entry.uid(), entry.stamp(), EventStatus.CANCELLED, entry.stub(key)));
        });
        boolean over = !at.isBefore(now.endsAt());
        return new Revision(new Ledger(batch, after), confirmed, over ? List.of() : cancelled);
    }

    /** What {@link #next} would change, to be shown before anything is written. */
    public CalendarChanges changes(BatchEvents now) {
        mustBeOurs(now);
        return CalendarChanges.between(entries, now.events());
    }

    /**
     * This ledger made safe against a file that is ahead of it, or that is all that is left: SEQUENCE will not fall
     * below what the file says, and events the ledger forgot are known again. Events of other batches are passed over.
     */
    public Ledger caughtUpWith(List<WrittenEvent> seen) {
        SortedMap<String, LedgerEntry> caughtUp = new TreeMap<>(entries);
        for (WrittenEvent event : seen) {
            if (!event.uid().equals(uidOf(event.key()))) continue;
            LedgerEntry known = entries.get(event.key());
            caughtUp.put(event.key(), known == null ? remembered(event) : known.caughtUpWith(event));
        }
        return new Ledger(batch, caughtUp);
    }

    /**
     * This ledger as if only what a file was seen to hold had been written: what another file was told counts as not yet
     * told to this one.
     */
    public Ledger asIn(List<WrittenEvent> seen) {
        SortedMap<String, LedgerEntry> there = new TreeMap<>();
        for (WrittenEvent event : seen) {
            if (!event.uid().equals(uidOf(event.key()))) continue;
            LedgerEntry known = entries.get(event.key());
            boolean same = known != null && known.stamp().equals(event.stamp());
            there.put(event.key(), same ? known : remembered(event));
        }
        return new Ledger(batch, there);
    }

    private static LedgerEntry remembered(WrittenEvent seen) {
        return new LedgerEntry(seen.uid(), seen.stamp(), seen.status(), "", "", seen.span(), seen.summary());
    }

    private void mustBeOurs(BatchEvents now) {
        if (!now.batch().equals(batch)) {
            throw new IllegalArgumentException("batch must be " + batch + ": " + now.batch());
        }
    }
}
