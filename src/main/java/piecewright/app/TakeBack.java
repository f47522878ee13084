package piecewright.app;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import piecewright.journal.Entry;
import piecewright.journal.Report.Corrected;
import piecewright.learn.Lessons.Known;
import piecewright.store.BatchFile;
import piecewright.store.FolderLock;
import piecewright.store.JournalFile.Draft;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;

/** Takes back what was done with a batch, or does it again. Nothing leaves the journal: what goes is struck out. */
public final class TakeBack {
    private TakeBack() {}

    /**
     * The plan of one reading of a batch in place of the plan of another, and its calendars after it; refused when the
     * batch was changed since.
     *
     * @param there the batch as it must stand in its file
     * @param wanted the batch with the plan it shall have
     */
    public static Keeping.Kept plan(BatchAtHand there, BatchAtHand wanted, CalendarManner manner, Instant now)
            throws StoreException, NotWrittenException {
        SavedBatch has = there.saved();
        SavedBatch had = wanted.saved();
        SavedBatch next = new SavedBatch(
                has.id(), had.request(), had.planJson(), had.calendarUids(), had.knownEntry(), has.finishedAt());
        replace(there, next);
        CalendarReading reading = there.reading(now);
        return new Keeping.Kept(
                Optional.empty(),
                LiveCalendar.refresh(there.file(), reading),
                OtherCalendars.of(there.file(), Optional.empty(), manner.units(), reading));
    }

    /** Entries count again as they counted in another reading of the journal; only those two readings differ in. */
    public static BatchAtHand.Recording entries(BatchAtHand batch, List<Entry> counted, List<Entry> wanted, Instant now)
            throws NotWrittenException {
        Map<Integer, Entry> are = byNumber(counted);
        Map<Integer, Entry> shall = byNumber(wanted);
        List<Draft> drafts = new ArrayList<>();
        are.forEach((number, entry) -> {
            if (!shall.containsKey(number))
                drafts.add(new Draft(now, now, Optional.empty(), new Corrected(number, Optional.empty())));
        });
        shall.forEach((number, entry) -> {
            if (!entry.equals(are.get(number)))
                drafts.add(
                        new Draft(entry.at(), now, entry.actId(), new Corrected(number, Optional.of(entry.report()))));
        });
        return batch.kept(drafts, now);
    }

    private static Map<Integer, Entry> byNumber(List<Entry> entries) {
        Map<Integer, Entry> numbered = new TreeMap<>();
        entries.forEach(entry -> numbered.put(entry.number(), entry));
        return numbered;
    }

    /** A batch, and what was known of its lot and its house. */
    public record Knowing(BatchAtHand batch, Known known) {
        public static Knowing of(BatchAtHand batch) throws StoreException {
            return new Knowing(batch, batch.lessons().known());
        }
    }

    /**
     * Opens a batch that was closed: what its closing wrote down is struck out, and what it taught is forgotten where
     * nothing was learned since; refused when the batch was changed since.
     */
    public static void finish(Knowing before, Knowing closed, Instant now) throws NotWrittenException {
        BatchAtHand batch = closed.batch();
        replace(batch, before.batch().saved());
        entries(batch, batch.journal().effective(), before.batch().journal().effective(), now);
        batch.lessons().putBack(closed.known(), before.known());
    }

    private static void replace(BatchAtHand there, SavedBatch next) throws NotWrittenException {
        try (FolderLock lock = Locking.of(List.of(there.file()))) {
            Keeping.mustBeAsSeen(there.file(), Optional.of(there.saved()));
            if (lock.holds()) BatchFile.write(there.file(), next);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }
}
