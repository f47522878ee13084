package piecewright.publish;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.CalendarChanges.Dropped;
import piecewright.calendar.DatedEvent;
import piecewright.calendar.IcsWriter;
import piecewright.calendar.Ledger;
import piecewright.calendar.Revision;
import piecewright.calendar.WrittenEvent;
import piecewright.calendar.WrittenEvents;
import piecewright.store.AtomicFile;
import piecewright.store.StoreException;

/**
 * A calendar file on disk, of one batch or of all. A reader sees the whole old file or the whole new one. Ledgers are
 * kept after the file is in place; should that fail, the next writing learns from the file what it said, so that no
 * SEQUENCE ever falls. A file of somebody else is never overwritten.
 */
public final class CalendarFile {
    private static final int MOST_BYTES = 20 << 20;

    private final Path path;
    private final Purpose purpose;
    private final String name;

    /** What the file is for. */
    public enum Purpose {
        /** Imported by hand, once: dropped events are in it as cancelled until their batch is over. */
        ONE_OFF,
        /** Watched by a calendar: dropped events are left out. */
        LIVE
    }

    /** One batch: what it shall say, what it said last, and where that is kept. */
    public record Member(BatchEvents events, Ledger ledger, LedgerShelf shelf) {
        public Member {
            Objects.requireNonNull(events);
            Objects.requireNonNull(ledger);
            Objects.requireNonNull(shelf);
        }

        private boolean owns(WrittenEvent event) {
            return event.uid().equals(ledger.uidOf(event.key()));
        }
    }

    /** How it went. */
    public enum Outcome {
        WRITTEN,
        /** The file already said all that. */
        UNCHANGED,
        /** There is no event any more, so the file is gone: a calendar must not be empty. */
        REMOVED,
        /** There is no event and no file. */
        NOTHING_TO_WRITE,
        /** What lies there is no calendar of ours; nothing was touched. */
        NOT_OURS
    }

    /** @param name what calendars show for the whole */
    public CalendarFile(Path path, Purpose purpose, String name) {
        this.path = path;
        this.purpose = purpose;
        this.name = name;
    }

    /** Brings the file up to date with exactly these batches. */
    public Outcome write(List<Member> batches, Instant now) throws StoreException {
        Optional<byte[]> before = read();
        Optional<List<WrittenEvent>> seen = seen(before);
        if (seen.isEmpty()) return Outcome.NOT_OURS;
        List<Revision> revisions = new ArrayList<>();
        List<DatedEvent> events = new ArrayList<>();
        for (Member member : batches) {
            Revision revision = member.ledger().caughtUpWith(seen.get()).next(member.events(), now);
            revisions.add(revision);
            events.addAll(purpose == Purpose.LIVE ? revision.forLiveFile() : revision.forImportFile());
        }
        Outcome outcome = put(before, events);
        for (int at = 0; at < revisions.size(); at++) {
            Ledger kept = revisions.get(at).ledger();
            if (!kept.equals(batches.get(at).ledger())) batches.get(at).shelf().keep(kept);
        }
        return outcome;
    }

    /**
     * What {@link #write} would change, to be shown first; empty if what lies there is not ours. A one-off file is set
     * against what was last exported, since that was imported; a live one against what it says now.
     */
    public Optional<CalendarChanges> changes(List<Member> batches) throws StoreException {
        return seen(read()).map(seen -> {
            List<CalendarChanges> parts = new ArrayList<>();
            for (Member member : batches) {
                Ledger before = purpose == Purpose.LIVE
                        ? member.ledger().asIn(seen)
                        : member.ledger().caughtUpWith(seen);
                parts.add(before.changes(member.events()));
            }
            List<Dropped> gone = seen.stream()
                    .filter(event -> batches.stream().noneMatch(member -> member.owns(event)))
                    .map(event -> new Dropped(event.key(), event.summary(), event.span()))
                    .toList();
            parts.add(new CalendarChanges(List.of(), List.of(), gone, 0, 0));
            return CalendarChanges.together(parts);
        });
    }

    private static Optional<List<WrittenEvent>> seen(Optional<byte[]> file) {
        return file.isEmpty() ? Optional.of(List.of()) : WrittenEvents.in(file.get());
    }

    private Outcome put(Optional<byte[]> before, List<DatedEvent> events) throws StoreException {
        if (events.isEmpty()) {
            if (before.isEmpty()) return Outcome.NOTHING_TO_WRITE;
            AtomicFile.remove(path);
            return Outcome.REMOVED;
        }
        byte[] after = new IcsWriter().file(name, events);
        if (before.isPresent() && Arrays.equals(before.get(), after)) return Outcome.UNCHANGED;
        AtomicFile.write(path, after);
        return Outcome.WRITTEN;
    }

    private Optional<byte[]> read() throws StoreException {
        if (!Files.exists(path)) return Optional.empty();
        if (!Files.isRegularFile(path)) throw new StoreException(path, "this is not an ordinary file; name another");
        try (InputStream stream = Files.newInputStream(path)) {
            return Optional.of(stream.readNBytes(MOST_BYTES));
        } catch (IOException failed) {
            throw new StoreException(path, "cannot be read; check its permissions", failed);
        }
    }
}
