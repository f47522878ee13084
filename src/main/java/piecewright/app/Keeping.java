package piecewright.app;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import piecewright.calendar.Ledger;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.store.AgendaReader;
import piecewright.store.AtomicFile;
import piecewright.store.BatchFile;
import piecewright.store.FolderLock;
import piecewright.store.JournalFile;
import piecewright.store.LedgerFile;
import piecewright.store.PlanJson;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;
import piecewright.text.Wording;

/**
 * Where a plan is kept: a batch file, a calendar file, both or neither. What was exported lies in a ledger file beside
 * the batch, or beside the calendar when there is no batch; from it a second export knows its own events again. A live
 * calendar that shows the batch is brought up to date.
 *
 * <p>Opening reads what is there and refuses what is not ours; nothing is written before {@link #keep}.
 */
public final class Keeping {
    private final Targets targets;
    private final Ledger ledger;
    private final Optional<SavedBatch> seen;
    private final StyleLibrary library;

    private Keeping(Targets targets, Ledger ledger, Optional<SavedBatch> seen, StyleLibrary library) {
        this.targets = targets;
        this.ledger = ledger;
        this.seen = seen;
        this.library = library;
    }

    /** The same for a plan made from the batch as it was then; whatever changed since is not written over. */
    Keeping madeFrom(SavedBatch batch) {
        return new Keeping(targets, ledger, Optional.of(batch), library);
    }

    /** The files to write. */
    public record Targets(Optional<Path> batch, Optional<Path> calendar) {
        /** The files of one of several batches. */
        public Targets part(int number) {
            return new Targets(
                    batch.map(file -> Beside.part(file, number)), calendar.map(file -> Beside.part(file, number)));
        }

        /** These files and others. */
        public List<Path> and(Path... others) {
            List<Path> all = new ArrayList<>(List.of(others));
            batch.ifPresent(all::add);
            calendar.ifPresent(all::add);
            return all;
        }
    }

    /**
     * What the calendar of this export and the live one were told, or would be; empty when there is none.
     *
     * @param others what became of the other calendars that show the batch
     */
    public record Kept(Optional<CalendarUpdate> calendar, Optional<CalendarUpdate> live, OtherCalendars others) {}

    /**
     * Looks at what is there already.
     *
     * @param newId gives the identity of a batch that was never kept before
     * @param library styles of the batches that share a calendar with it
     */
    public static Keeping open(Targets targets, ReadWish wish, Supplier<UUID> newId, StyleLibrary library)
            throws StoreException, NotWrittenException {
        mustHavePlaces(targets);
        Optional<Ledger> beside =
                targets.calendar().isPresent() ? ledgerBeside(targets.calendar().get()) : Optional.empty();
        Optional<SavedBatch> saved = saved(targets, wish);
        UUID id = saved.map(SavedBatch::id)
                .orElseGet(() -> beside.map(Ledger::batch).orElseGet(newId));
        Optional<Ledger> kept =
                targets.batch().isPresent() ? ledgerBeside(targets.batch().get()) : beside;
        Ledger ledger = kept.filter(known -> known.batch().equals(id))
                .orElseGet(
                        () -> beside.filter(known -> known.batch().equals(id)).orElseGet(() -> Ledger.startedFor(id)));
        if (targets.calendar().isPresent()) {
            OneOffCalendar.mayBeWritten(targets.calendar().get(), List.of(ledger));
        }
        return new Keeping(targets, ledger, saved, library);
    }

    /**
     * The same for a plan that does not go on from what was done: refused over a batch under way, whose journal and
     * calendars tell of the plan it has.
     *
     * @param reading a batch whose first act lies before its moment is under way
     */
    public static Keeping openFresh(Targets targets, ReadWish wish, Supplier<UUID> newId, CalendarReading reading)
            throws StoreException, NotWrittenException {
        Keeping keeping = open(targets, wish, newId, reading.library());
        if (keeping.seen.isPresent()) {
            mustNotBeUnderWay(targets.batch().orElseThrow(), keeping.seen.get(), reading.now());
        }
        return keeping;
    }

    private static void mustNotBeUnderWay(Path file, SavedBatch kept, Instant now) throws StoreException {
        Path journal = JournalFile.beside(file);
        int entries = JournalFile.read(journal, kept.id()).journal().entries().size();
        Instant start = AgendaReader.read(file, kept.planJson()).acts().stream()
                .map(Act::startsAt)
                .min(Comparator.naturalOrder())
                .orElse(now);
        if (entries == 0 && start.isAfter(now)) return;
        String said = entries == 0 ? "began already" : "is under way, with " + entries + " entries in its journal";
        throw new StoreException(
                file,
                "holds a batch that " + said
                        + ". Its plan, its journal and its calendars were left as they are. Keep this"
                        + " plan under another name, or plan the rest of that batch with replan");
    }

    private static void mustHavePlaces(Targets targets) throws NotWrittenException {
        try {
            if (targets.batch().isPresent())
                AtomicFile.mustHaveAPlace(targets.batch().get());
            if (targets.calendar().isPresent())
                AtomicFile.mustHaveAPlace(targets.calendar().get());
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private static Optional<Ledger> ledgerBeside(Path file) throws StoreException {
        Path beside = Beside.ledger(file);
        return Files.exists(beside) ? Optional.of(LedgerFile.read(beside)) : Optional.empty();
    }

    private static Optional<SavedBatch> saved(Targets targets, ReadWish wish) throws StoreException {
        if (targets.batch().isEmpty() || !Files.exists(targets.batch().get())) return Optional.empty();
        Path file = targets.batch().get();
        SavedBatch before = BatchFile.read(file);
        boolean same = before.request().styleKey().equals(wish.request().style().key())
                && before.request().lotText().equals(wish.lotText());
        if (!same) {
            throw new StoreException(file, "holds a batch of another style or lot; name another file for this one");
        }
        if (before.finishedAt().isPresent()) {
            throw new StoreException(file, "holds a batch that is finished; name another file for this one");
        }
        return Optional.of(before);
    }

    /** Whether a plan that was kept there before gives way. */
    public boolean replaces() {
        return seen.isPresent();
    }

    /** What {@link #keep} would tell the calendars. */
    public Kept preview(ReadWish wish, Plan plan, CalendarManner manner, Instant now)
            throws StoreException, NotWrittenException {
        KeptBatch batch = asKept(wish, batch(wish, plan, 0, manner.units()), now);
        Optional<CalendarUpdate> calendar = targets.calendar().isPresent()
                ? Optional.of(OneOffCalendar.over(targets.calendar().get(), List.of(batch), kept())
                        .preview(manner))
                : Optional.empty();
        Optional<CalendarUpdate> live = targets.batch().isPresent()
                ? LiveCalendar.preview(targets.batch().get(), batch.agenda(), new CalendarReading(library, now))
                : Optional.empty();
        return new Kept(calendar, live, OtherCalendars.none());
    }

    /** Writes the batch, then the calendar with its ledger, then the live calendar that shows the batch. */
    public Kept keep(ReadWish wish, Plan plan, CalendarManner manner, Instant now) throws NotWrittenException {
        return keep(wish, plan, 0, manner, now);
    }

    /** The same for a plan that takes a journal into account up to an entry. */
    public Kept keep(ReadWish wish, Plan plan, int knownEntry, CalendarManner manner, Instant now)
            throws NotWrittenException {
        Optional<CalendarUpdate> calendar;
        try (FolderLock lock = Locking.of(targets.and())) {
            calendar = written(wish, batch(wish, plan, knownEntry, manner.units()), manner, now, lock);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
        if (targets.batch().isEmpty()) return new Kept(calendar, Optional.empty(), OtherCalendars.none());
        Path file = targets.batch().get();
        CalendarReading reading = new CalendarReading(library, now);
        Optional<CalendarUpdate> live = LiveCalendar.refresh(file, reading);
        return new Kept(calendar, live, OtherCalendars.of(file, targets.calendar(), manner.units(), reading));
    }

    private Optional<CalendarUpdate> written(
            ReadWish wish, SavedBatch saved, CalendarManner manner, Instant now, FolderLock lock)
            throws StoreException, NotWrittenException {
        if (targets.batch().isPresent()) {
            Path file = targets.batch().get();
            mustBeAsSeen(file, seen);
            BatchFile.write(file, saved);
        }
        if (targets.calendar().isEmpty()) return Optional.empty();
        Path calendar = targets.calendar().get();
        return Optional.of(OneOffCalendar.over(calendar, List.of(asKept(wish, saved, now)), kept())
                .write(manner, now, lock));
    }

    static void mustBeAsSeen(Path file, Optional<SavedBatch> seen) throws StoreException {
        Optional<SavedBatch> there = Files.exists(file) ? Optional.of(BatchFile.read(file)) : Optional.empty();
        if (!there.equals(seen)) {
            throw new StoreException(
                    file,
                    "was changed by another window or terminal meanwhile, and was left as it is; look at it again and"
                            + " do it again");
        }
    }

    private SavedBatch batch(ReadWish wish, Plan plan, int knownEntry, DisplayUnits units) {
        Map<String, UUID> uids = new HashMap<>();
        for (Act act : plan.acts()) uids.put(act.id(), ledger.uidOf(act.id()));
        String json = new PlanJson(new Wording(units, plan.subject().zone())).write(plan);
        return new SavedBatch(ledger.batch(), wish.texts(), json, uids, knownEntry, Optional.empty());
    }

    /** Read back from its document even where it is not kept, so that its entries are the same when it is. */
    private List<Path> kept() {
        return targets.batch().map(List::of).orElse(List.of());
    }

    private KeptBatch asKept(ReadWish wish, SavedBatch saved, Instant now) throws StoreException {
        Path file = targets.batch().or(targets::calendar).orElse(Path.of("plan"));
        return KeptBatch.of(file, ledger, saved, wish, now);
    }
}
