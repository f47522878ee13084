package piecewright.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Supplier;
import piecewright.calendar.BatchEvents;
import piecewright.calendar.CalendarChanges;
import piecewright.calendar.ExportOptions;
import piecewright.calendar.Ledger;
import piecewright.calendar.PlanEvents;
import piecewright.calendar.WrittenEvent;
import piecewright.calendar.WrittenEvents;
import piecewright.plan.Act;
import piecewright.plan.Plan;
import piecewright.publish.CalendarFile;
import piecewright.store.AtomicFile;
import piecewright.store.BatchFile;
import piecewright.store.LedgerFile;
import piecewright.store.PlanJson;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.store.TextFile;
import piecewright.text.DisplayUnits;
import piecewright.text.Wording;

/**
 * Where a plan is kept: a batch file, a calendar file, both or neither. What was exported lies in a ledger file beside
 * the batch, or beside the calendar when there is no batch; from it a second export knows its own events again.
 *
 * <p>Opening reads what is there and refuses what is not ours; nothing is written before {@link #keep}.
 */
public final class Keeping {
    private static final String LEDGER = ".ledger.json";

    private final Targets targets;
    private final Ledger ledger;

    private Keeping(Targets targets, Ledger ledger) {
        this.targets = targets;
        this.ledger = ledger;
    }

    /** The files to write. */
    public record Targets(Optional<Path> batch, Optional<Path> calendar) {}

    /** What the calendar was told; empty when there is none. */
    public record Kept(Optional<CalendarChanges> calendar) {}

    /**
     * Looks at what is there already.
     *
     * @param newId gives the identity of a batch that was never kept before
     */
    public static Keeping open(Targets targets, ReadWish wish, Supplier<UUID> newId)
            throws StoreException, NotWrittenException {
        mustHavePlaces(targets);
        Optional<Ledger> beside =
                targets.calendar().isPresent() ? ledgerBeside(targets.calendar().get()) : Optional.empty();
        Optional<UUID> saved = savedId(targets, wish);
        UUID id = saved.orElseGet(() -> beside.map(Ledger::batch).orElseGet(newId));
        Optional<Ledger> kept =
                targets.batch().isPresent() ? ledgerBeside(targets.batch().get()) : beside;
        Ledger ledger = kept.filter(known -> known.batch().equals(id))
                .orElseGet(
                        () -> beside.filter(known -> known.batch().equals(id)).orElseGet(() -> Ledger.startedFor(id)));
        if (targets.calendar().isPresent()) mustBeOfThisBatch(targets.calendar().get(), ledger);
        return new Keeping(targets, ledger);
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
        Path beside = ledgerFile(file);
        return Files.exists(beside) ? Optional.of(LedgerFile.read(beside)) : Optional.empty();
    }

    private static Path ledgerFile(Path file) {
        return file.resolveSibling(file.getFileName() + LEDGER);
    }

    private static Optional<UUID> savedId(Targets targets, ReadWish wish) throws StoreException {
        if (targets.batch().isEmpty() || !Files.exists(targets.batch().get())) return Optional.empty();
        Path file = targets.batch().get();
        SavedBatch before = BatchFile.read(file);
        boolean same = before.request().styleKey().equals(wish.request().style().key())
                && before.request().lotText().equals(wish.lotText());
        if (!same) {
            throw new StoreException(file, "holds a batch of another style or lot; name another file for this one");
        }
        return Optional.of(before.id());
    }

    private static void mustBeOfThisBatch(Path calendar, Ledger ledger) throws StoreException {
        if (!Files.exists(calendar)) return;
        byte[] octets = TextFile.read(calendar, TextFile.LARGE_BYTES).getBytes(StandardCharsets.UTF_8);
        List<WrittenEvent> seen = WrittenEvents.in(octets).orElseThrow(() -> notOurs(calendar));
        boolean foreign = seen.stream().anyMatch(event -> !event.uid().equals(ledger.uidOf(event.key())));
        if (foreign) {
            throw new StoreException(
                    calendar,
                    "holds events of another batch, or its "
                            + ledgerFile(calendar).getFileName() + " is lost; name another file");
        }
    }

    private static StoreException notOurs(Path calendar) {
        return new StoreException(calendar, "is there already and is no calendar of ours; name another file");
    }

    /** Writes the batch, then the calendar, then the ledger. */
    public Kept keep(ReadWish wish, Plan plan, DisplayUnits units, Instant now) throws NotWrittenException {
        return keep(wish, plan, 0, units, now);
    }

    /** The same for a plan that takes a journal into account up to an entry. */
    public Kept keep(ReadWish wish, Plan plan, int knownEntry, DisplayUnits units, Instant now)
            throws NotWrittenException {
        try {
            if (targets.batch().isPresent()) {
                BatchFile.write(targets.batch().get(), batch(wish, plan, knownEntry, units));
            }
            return new Kept(
                    targets.calendar().isPresent()
                            ? Optional.of(export(targets.calendar().get(), plan, units, now))
                            : Optional.empty());
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    private SavedBatch batch(ReadWish wish, Plan plan, int knownEntry, DisplayUnits units) {
        Map<String, UUID> uids = new HashMap<>();
        for (Act act : plan.acts()) uids.put(act.id(), ledger.uidOf(act.id()));
        String json = new PlanJson(new Wording(units, plan.subject().zone())).write(plan);
        return new SavedBatch(ledger.batch(), wish.texts(), json, uids, knownEntry);
    }

    private CalendarChanges export(Path calendar, Plan plan, DisplayUnits units, Instant now) throws StoreException {
        CalendarWords words = new CalendarWords(units, plan.subject().zone());
        BatchEvents events = new PlanEvents(words, ExportOptions.usual()).of(ledger.batch(), plan);
        Path shelf = ledgerFile(targets.batch().orElse(calendar));
        CalendarFile file = new CalendarFile(
                calendar,
                CalendarFile.Purpose.ONE_OFF,
                plan.subject().title() + " – " + plan.subject().lot());
        CalendarFile.Member member =
                new CalendarFile.Member(events, ledger, changed -> LedgerFile.write(shelf, changed));
        if (file.write(List.of(member), now) == CalendarFile.Outcome.NOT_OURS) throw notOurs(calendar);
        return ledger.changes(events);
    }
}
