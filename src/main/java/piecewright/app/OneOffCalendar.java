package piecewright.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.Ledger;
import piecewright.calendar.WrittenEvent;
import piecewright.calendar.WrittenEvents;
import piecewright.publish.CalendarFile;
import piecewright.publish.CalendarFile.Purpose;
import piecewright.store.AtomicFile;
import piecewright.store.FolderLock;
import piecewright.store.StoreException;
import piecewright.store.TextFile;

/** One calendar file of one batch or of several, to be imported by hand. */
public final class OneOffCalendar {
    private final Path calendar;
    private final List<KeptBatch> batches;
    private final List<Path> files;

    private OneOffCalendar(Path calendar, List<KeptBatch> batches, List<Path> files) {
        this.calendar = calendar;
        this.batches = batches;
        this.files = List.copyOf(files);
    }

    /** Reads the batches of these files and looks at what lies there; nothing is written yet. */
    public static OneOffCalendar of(Path calendar, List<Path> batchFiles, CalendarReading reading)
            throws StoreException, NotWrittenException {
        return over(calendar, KeptBatch.open(batchFiles, reading), batchFiles);
    }

    /** @param files in which the batches are kept; none for a plan that is not kept */
    static OneOffCalendar over(Path calendar, List<KeptBatch> batches, List<Path> files)
            throws StoreException, NotWrittenException {
        mustHaveAPlace(calendar);
        mayBeWritten(calendar, batches.stream().map(KeptBatch::ledger).toList());
        return new OneOffCalendar(calendar, batches, files);
    }

    static void mustHaveAPlace(Path calendar) throws NotWrittenException {
        try {
            AtomicFile.mustHaveAPlace(calendar);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    /** Refuses a live calendar and whatever is not ours. */
    static void mayBeWritten(Path calendar, List<Ledger> ledgers) throws StoreException {
        if (Files.exists(Beside.liveList(calendar))) {
            throw new StoreException(calendar, "is a live calendar, which must not be imported; name another file");
        }
        mustHoldOnly(calendar, ledgers);
    }

    /** Refuses a file with entries of other batches, which would be lost, and one that is no calendar of ours. */
    static void mustHoldOnly(Path calendar, List<Ledger> ledgers) throws StoreException {
        if (!Files.exists(calendar)) return;
        byte[] octets = TextFile.read(calendar, TextFile.LARGE_BYTES).getBytes(StandardCharsets.UTF_8);
        List<WrittenEvent> seen = WrittenEvents.in(octets).orElseThrow(() -> notOurs(calendar));
        boolean foreign = seen.stream()
                .anyMatch(event ->
                        ledgers.stream().noneMatch(ledger -> event.uid().equals(ledger.uidOf(event.key()))));
        if (foreign) {
            throw new StoreException(
                    calendar,
                    "holds events of another batch, or its "
                            + Beside.ledger(calendar).getFileName() + " is lost; name another file");
        }
    }

    static StoreException notOurs(Path calendar) {
        return new StoreException(calendar, "is there already and is no calendar of ours; name another file");
    }

    /** What {@link #write} would tell it. */
    public CalendarUpdate preview(CalendarManner manner) throws StoreException {
        CalendarChanges changes =
                file().changes(KeptBatch.members(batches, manner)).orElseThrow(() -> notOurs(calendar));
        return new CalendarUpdate(calendar.toString(), batches.get(0).zone(), changes, List.of());
    }

    /** Writes it and the ledgers of its batches. */
    public CalendarUpdate write(CalendarManner manner, Instant now) throws NotWrittenException {
        List<Path> files = new ArrayList<>(List.of(calendar));
        batches.forEach(batch -> files.add(batch.shelf()));
        try (FolderLock lock = Locking.of(files)) {
            return write(manner, now, lock);
        }
    }

    /** The same for who holds the lock of the folders. */
    CalendarUpdate write(CalendarManner manner, Instant now, FolderLock lock) throws NotWrittenException {
        if (!lock.holds()) throw new IllegalArgumentException("lock must be held");
        try {
            CalendarUpdate update = preview(manner);
            file().write(KeptBatch.members(batches, manner), now);
            CalendarHabits.exported(calendar, files, manner.options());
            return update;
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private CalendarFile file() {
        return new CalendarFile(calendar, Purpose.ONE_OFF, KeptBatch.title(batches));
    }
}
