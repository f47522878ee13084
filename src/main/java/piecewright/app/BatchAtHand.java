package piecewright.app;

import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import piecewright.history.Account;
import piecewright.history.Contradiction;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.journal.Report;
import piecewright.journal.Report.Corrected;
import piecewright.journal.Report.Tare;
import piecewright.learn.Lessons;
import piecewright.plan.Agenda;
import piecewright.plan.Begun;
import piecewright.plan.Booking;
import piecewright.plan.Continuation;
import piecewright.plan.Found;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.reading.LineReader;
import piecewright.reading.Outcome;
import piecewright.reading.Scene;
import piecewright.replan.Batch;
import piecewright.replan.Finished;
import piecewright.replan.Position;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Replanner;
import piecewright.replan.WetMalt;
import piecewright.replan.Where;
import piecewright.store.AgendaReader;
import piecewright.store.BatchFile;
import piecewright.store.FolderLock;
import piecewright.store.JournalFile;
import piecewright.store.JournalFile.Content;
import piecewright.store.JournalFile.DamagedLine;
import piecewright.store.JournalFile.Draft;
import piecewright.store.PlanTimes;
import piecewright.store.SavedBatch;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** A kept batch with its journal: what its faces record in it, where it stands, how its rest is planned anew. */
public final class BatchAtHand {
    private final Path file;
    private final SavedBatch saved;
    private final ReadWish wish;
    private final Batch batch;
    private final List<DamagedLine> damaged;
    private final Tools tools;

    /** What a batch is read and planned with. */
    private record Tools(StyleLibrary library, Continuation continuation) {
        private Tools {
            Objects.requireNonNull(library);
            Objects.requireNonNull(continuation);
        }
    }

    private BatchAtHand(
            Path file, SavedBatch saved, ReadWish wish, Batch batch, List<DamagedLine> damaged, Tools tools) {
        this.file = file;
        this.saved = saved;
        this.wish = wish;
        this.batch = batch;
        this.damaged = List.copyOf(damaged);
        this.tools = tools;
    }

    /** Reads the batch and the journal beside it; a batch without a journal has an empty one. */
    public static BatchAtHand open(Path file, StyleLibrary library, Continuation continuation) throws StoreException {
        SavedBatch saved = BatchFile.read(file);
        ReadWish wish = ReadWish.of(file, saved, library);
        PlanTimes times = PlanTimes.of(file, saved);
        Content content = JournalFile.read(JournalFile.beside(file), saved.id());
        Batch batch = new Batch(
                wish.request(), times.grainKg(), times.visits(), times.places(), saved.knownEntry(), content.journal());
        return new BatchAtHand(file, saved, wish, batch, content.damaged(), new Tools(library, continuation));
    }

    /** The same batch in another house: other hours, other kit. */
    public BatchAtHand inHouse(Path houseFile) throws StoreException {
        ReadWish moved = wish.withHouse(houseFile);
        return new BatchAtHand(file, saved, moved, batch.withRequest(moved.request()), damaged, tools);
    }

    /** The same batch beside others: their hands and kit are not free. */
    public BatchAtHand beside(List<Booking> others) {
        ReadWish among = wish.withRequest(wish.request().beside(others));
        return new BatchAtHand(file, saved, among, batch.withRequest(among.request()), damaged, tools);
    }

    /** What this batch teaches about its lot and its house so far; kept beside their files where asked. */
    public BatchLessons lessons() {
        return new BatchLessons(wish.files().lot(), wish.files().house());
    }

    /** The batch as lessons are drawn from it. */
    public Lessons.Batch told() {
        return new Lessons.Batch(saved.id(), wish.request(), batch.grainKg(), batch.planned(), batch.journal());
    }

    /** When the batch was closed; empty while it is under way. */
    public Optional<Instant> finishedAt() {
        return saved.finishedAt();
    }

    /** Its acts and tests as they are kept. */
    Agenda agenda() throws StoreException {
        return AgendaReader.read(file, saved.planJson());
    }

    /** What its plan expected of it in the end. */
    public PlanTimes.Expected expected() throws StoreException {
        return PlanTimes.expected(file, saved);
    }

    /** What went in and what came out; empty before its malt was weighed. */
    public Optional<Finished> finished(Instant now) {
        return Finished.of(batch, account(now));
    }

    /** What its journal says happened until an instant. */
    Account account(Instant now) {
        return batch.account(vessels(), now);
    }

    /** The entry with the malt's weight; empty before it was weighed. */
    Optional<Entry> maltWeighed(Instant now) {
        return Finished.weighed(batch, account(now));
    }

    /** Malt off the kiln that is too wet to keep. */
    Optional<WetMalt> wetMalt(Instant now) {
        return where(batch, now).flatMap(where -> where.help().wetMalt());
    }

    /** Closes the batch; refused when it was changed by anybody since it was opened. */
    void close(Instant now) throws NotWrittenException {
        try (FolderLock lock = Locking.of(List.of(file))) {
            Keeping.mustBeAsSeen(file, Optional.of(saved));
            if (lock.holds()) BatchFile.write(file, saved.finished(now));
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    /** As it was kept. */
    SavedBatch saved() {
        return saved;
    }

    CalendarReading reading(Instant now) {
        return new CalendarReading(tools.library(), now);
    }

    public ZoneId zone() {
        return wish.request().house().zone();
    }

    /** What the batch was wished as. */
    public PlanRequest request() {
        return wish.request();
    }

    /** The file the batch is kept in. */
    public Path file() {
        return file;
    }

    public Journal journal() {
        return batch.journal();
    }

    /** Lines of the journal that cannot be read; they stay in the file. */
    public List<DamagedLine> damaged() {
        return damaged;
    }

    /** What came of a typed line. */
    public sealed interface Recording {
        /**
         * Kept; questions are those the new entries raise.
         *
         * @param wetMalt malt that these entries show to be off the kiln too wet to keep
         * @param calendarFault why the live calendar could not be told; empty if it was or there is none
         */
        record Kept(
                List<Entry> entries,
                List<Contradiction> questions,
                Optional<WetMalt> wetMalt,
                Optional<String> calendarFault)
                implements Recording {
            public Kept {
                Objects.requireNonNull(wetMalt);
                Objects.requireNonNull(calendarFault);
                entries = List.copyOf(entries);
                questions = List.copyOf(questions);
            }
        }

        /** Nothing was kept: this must be answered first. */
        record Asked(Outcome.Asked asked) implements Recording {}

        /** Nothing was kept and nothing of it can be: why, in one sentence. */
        record Refused(String sentence) implements Recording {}
    }

    /** Reads a typed line and adds what it means to the journal. */
    public Recording recordLine(String line, DisplayUnits units, Instant now)
            throws StoreException, NotWrittenException {
        Outcome outcome = read(line, units, now);
        if (outcome instanceof Outcome.Asked asked) return new Recording.Asked(asked);
        if (outcome instanceof Outcome.Refused refused) return new Recording.Refused(refused.sentence());
        List<Draft> drafts = ((Outcome.Kept) outcome)
                .said().stream()
                        .map(said -> new Draft(said.at(), now, Optional.empty(), said.report()))
                        .toList();
        return kept(drafts, now);
    }

    /** What a line means, with nothing kept. Striking entries needs no more than the journal. */
    public Outcome read(String line, DisplayUnits units, Instant now) {
        Optional<Outcome> struck = LineReader.struck(line, BatchScene.of(batch, Optional.empty(), units, now));
        return struck.orElseGet(() -> LineReader.read(line, scene(units, now)));
    }

    /** What a reader of lines is told of the batch. */
    public Scene scene(DisplayUnits units, Instant now) {
        return BatchScene.of(batch, where(batch, now), units, now);
    }

    /** The same batch with these written down. */
    BatchAtHand noting(List<Draft> drafts) throws NotWrittenException {
        return drafts.isEmpty() ? this : withJournal(appended(drafts).journal());
    }

    /** The same batch as if these were written down; nothing is. */
    BatchAtHand asIf(List<Draft> drafts) {
        Journal journal = batch.journal();
        for (Draft draft : drafts) {
            int number = journal.nextNumber();
            journal = journal.with(new Entry(number, draft.at(), draft.writtenAt(), draft.actId(), draft.report()));
        }
        return withJournal(journal);
    }

    private BatchAtHand withJournal(Journal journal) {
        return new BatchAtHand(file, saved, wish, batch.withJournal(journal), damaged, tools);
    }

    private Content appended(List<Draft> drafts) throws NotWrittenException {
        try {
            return JournalFile.append(JournalFile.beside(file), saved.id(), journal -> drafts);
        } catch (StoreException failed) {
            throw new NotWrittenException(failed);
        }
    }

    Recording kept(List<Draft> drafts, Instant now) throws NotWrittenException {
        Content after = appended(drafts);
        List<Entry> all = after.journal().entries();
        List<Entry> entries = all.subList(all.size() - drafts.size(), all.size());
        boolean struck = drafts.stream().map(Draft::report).allMatch(BatchAtHand::strikes);
        Optional<Where> where = struck ? Optional.empty() : where(batch.withJournal(after.journal()), now);
        List<Contradiction> raised =
                where.map(stands -> raised(stands, entries)).orElse(List.of());
        Optional<WetMalt> wetMalt = where.flatMap(stands -> stands.help().wetMalt());
        return new Recording.Kept(entries, raised, wetMalt, calendarFault(now));
    }

    /** Whether it only strikes out: that needs no reading of the others, and raises no question. */
    private static boolean strikes(Report report) {
        return report instanceof Corrected corrected && corrected.instead().isEmpty();
    }

    /** What these entries contradict, or are contradicted by. */
    private static List<Contradiction> raised(Where where, List<Entry> entries) {
        Set<Integer> numbers = new HashSet<>();
        entries.forEach(entry -> {
            numbers.add(entry.number());
            if (entry.report() instanceof Corrected corrected) numbers.add(corrected.entry());
        });
        return where.account().contradictions().stream()
                .filter(question -> numbers.contains(question.entry()))
                .toList();
    }

    /** Brings the live calendar up to date: what was done is ticked there. What was written down stays, come what may. */
    private Optional<String> calendarFault(Instant now) {
        try {
            LiveCalendar.refresh(file, reading(now));
            return Optional.empty();
        } catch (NotWrittenException failed) {
            return Optional.of(String.valueOf(failed.getMessage()));
        }
    }

    /** Strikes an entry out, whatever the others are; it stays in the journal. */
    public Recording strike(int number, Instant now) throws NotWrittenException {
        Corrected struck = new Corrected(number, Optional.empty());
        return kept(List.of(new Draft(now, now, Optional.empty(), struck)), now);
    }

    private List<Tare> vessels() {
        return batch.journal().vessels();
    }

    /**
     * Where the piece stands, its lot and kit taken as this batch has taught them so far; empty when the house has no
     * kit for it any more.
     */
    public Optional<Where> where(Instant now) throws StoreException {
        return where(learned(), now);
    }

    private Optional<Where> where(Batch believed, Instant now) {
        return new Position(tools.continuation())
                .of(believed, believed.journal().vessels(), now);
    }

    /** The acts where they stand in the plan, as forecast before anything was found; empty as {@link #where}. */
    public Optional<Plan> asPlanned(Instant now) {
        Begun nothing = new Begun(batch.grainKg(), List.of(), Found.nothing(), batch.planned(), batch.places(), now);
        return tools.continuation().told(batch.request(), nothing, batch.planned());
    }

    /** Why there is nothing to be said of the batch, where {@link #where} is empty. */
    public StoreException noKit() {
        return new StoreException(file, "its house has no kit that holds this batch any more; mend the house");
    }

    /** The wish with its lot and kit as this batch has taught them so far. */
    PlanRequest requestSoFar() throws StoreException {
        return LearnedSoFar.of(told(), lessons());
    }

    /** The rest planned anew, by a lot and a kit as this batch has taught them so far. */
    public ReplanResult replan(Instant now) throws StoreException {
        return new Replanner(tools.continuation()).replan(learned(), vessels(), now);
    }

    private Batch learned() throws StoreException {
        return batch.withRequest(requestSoFar());
    }

    /** Writes the plan as it stands into a calendar; what changed there since the last time. */
    public Keeping.Kept calendar(Path calendar, CalendarManner manner, Instant now)
            throws StoreException, NotWrittenException {
        Keeping keeping = Keeping.open(
                new Keeping.Targets(Optional.of(file), Optional.of(calendar)), wish, saved::id, tools.library());
        Plan plan = where(now).orElseThrow(this::noKit).plan();
        return keeping.keep(wish, plan, batch.known(), manner, now);
    }

    /**
     * Keeps a new plan in place of the old one, and in a calendar where asked; refused when the batch was changed by
     * anybody since it was opened.
     */
    public Keeping.Kept accept(Replanned replanned, Optional<Path> calendar, CalendarManner manner, Instant now)
            throws StoreException, NotWrittenException {
        Keeping keeping = Keeping.open(
                        new Keeping.Targets(Optional.of(file), calendar), wish, saved::id, tools.library())
                .madeFrom(saved);
        Plan plan = replanned.plan();
        return keeping.keep(wish, plan, batch.journal().nextNumber() - 1, manner, now);
    }
}
