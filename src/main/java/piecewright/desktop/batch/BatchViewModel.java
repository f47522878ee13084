package piecewright.desktop.batch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.BatchAtHand;
import piecewright.app.BatchAtHand.Recording;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarUpdate;
import piecewright.app.NotWrittenException;
import piecewright.calendar.CalendarChanges;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.desktop.shell.UndoHistory;
import piecewright.desktop.timeline.BandWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.PieceChart.Bands;
import piecewright.ensemble.Sureness;
import piecewright.journal.Entry;
import piecewright.plan.Booking;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

/** One piece under way: where it stands, what is written down, and a new plan of its rest to accept or not. */
public final class BatchViewModel {
    private final Opener opener;
    private final Threads threads;
    private final Supplier<Instant> clock;
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<Optional<Shown>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Proposal>> proposal = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Reply> reply = new ReadOnlyObjectWrapper<>(Reply.nothing());
    private final ReadOnlyStringWrapper calendarNote = new ReadOnlyStringWrapper("");
    private final ReadOnlyObjectWrapper<Bands> bands = new ReadOnlyObjectWrapper<>(Bands.none());
    private final Foresight foresight;
    private final ReadOnlyBooleanWrapper planning = new ReadOnlyBooleanWrapper();
    private final AtomicInteger asked = new AtomicInteger();
    private final AtomicInteger latest = new AtomicInteger();
    private Optional<Path> file = Optional.empty();
    private final BatchSteps steps;
    private final UndoHistory history;

    /** Opens a kept batch. */
    public interface Opener {
        BatchAtHand open(Path file) throws StoreException;
    }

    /** What is known around a batch. */
    public interface Foresight {
        /** How sure a plan is. */
        Sureness of(PlanRequest request, Plan plan);

        /** What the other pieces under way have taken of its house. */
        List<Booking> besides(BatchAtHand batch) throws StoreException;

        /** Brings the one calendar that shows all pieces up to date, this one among them. */
        CalendarUpdate oneCalendar(Path batch, Instant now) throws StoreException, NotWrittenException;
    }

    /** A batch as it stands. */
    public record Shown(BatchAtHand batch, Where where, PieceChart chart, List<String> sentences) {
        public Shown {
            sentences = List.copyOf(sentences);
        }

        public Plan plan() {
            return where.plan();
        }
    }

    /** Whose clock, units and history count. */
    public record Own(Supplier<Instant> clock, DisplayUnits units, UndoHistory history) {}

    public BatchViewModel(Opener opener, Foresight foresight, Threads threads, Own own) {
        this.foresight = foresight;
        shown.addListener((batch, before, now) -> foresee(now));
        this.opener = opener;
        this.threads = threads;
        this.clock = own.clock();
        this.units = own.units();
        this.history = own.history();
        this.steps = new BatchSteps(this, history);
    }

    /** What is done with the batch, to be taken back. */
    BatchSteps steps() {
        return steps;
    }

    Opener opener() {
        return opener;
    }

    public ReadOnlyObjectProperty<Optional<Shown>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** Where the figures of the piece shown lie eight times in ten; it follows the piece a little later. */
    public ReadOnlyObjectProperty<Bands> bandsProperty() {
        return bands.getReadOnlyProperty();
    }

    private void foresee(Optional<Shown> batch) {
        bands.set(Bands.none());
        batch.ifPresent(known -> threads.background().execute(() -> {
            if (shown.get().filter(now -> now == known).isEmpty()) return;
            Sureness sure = foresight.of(known.batch().request(), known.plan());
            double sd = known.where().water() instanceof Where.Water.Known water ? water.sdFraction() : 0;
            Bands found = BandWriter.bands(
                    known.chart(), known.plan(), sure, known.where().now(), sd);
            threads.ui().execute(() -> {
                if (shown.get().filter(now -> now == known).isPresent()) bands.set(found);
            });
        }));
    }

    public ReadOnlyObjectProperty<Optional<Proposal>> proposalProperty() {
        return proposal.getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<Reply> replyProperty() {
        return reply.getReadOnlyProperty();
    }

    /** What the calendar was told, or that it is to be told; empty text for nothing. */
    public ReadOnlyStringProperty calendarNoteProperty() {
        return calendarNote.getReadOnlyProperty();
    }

    public void open(Path batch) {
        if (file.filter(batch::equals).isEmpty()) {
            proposal.set(Optional.empty());
            reply.set(Reply.nothing());
            calendarNote.set("");
        }
        file = Optional.of(batch);
        read();
    }

    /** The batch that is looked at. */
    public Optional<Path> file() {
        return file;
    }

    /** Looks at no batch any more. */
    public void close() {
        latest.incrementAndGet();
        file = Optional.empty();
        proposal.set(Optional.empty());
        shown.set(Optional.empty());
    }

    /** Reads the batch again, for its files may have changed. */
    public void read() {
        file.ifPresent(batch -> {
            int ticket = latest.incrementAndGet();
            Instant now = clock.get();
            work(threads.background(), () -> {
                Shown found = shown(opener.open(batch), now);
                threads.ui().execute(() -> {
                    if (ticket == latest.get()) shown.set(Optional.of(found));
                });
            });
        });
    }

    /** Writes down what happened, as it is typed. */
    public void record(String line) {
        file.ifPresent(batch -> record(
                batch,
                now -> steps.recorded(batch, line, now.before(), now.after()),
                (opened, now) -> opened.recordLine(line, units, now)));
    }

    /** Strikes an entry out; it stays in the journal. */
    public void strike(int number) {
        String words = WindowWords.say("undo.strike", Integer.toString(number));
        file.ifPresent(batch -> record(
                batch,
                now -> steps.recorded(batch, words, now.before(), now.after()),
                (opened, now) -> opened.strike(number, now)));
    }

    /** Strikes the entry out that was written down last. */
    public void strikeLast() {
        file.ifPresent(batch -> work(threads.background(), () -> {
            Optional<Entry> last =
                    opener.open(batch).journal().effective().stream().max(Comparator.comparingInt(Entry::number));
            threads.ui()
                    .execute(() -> last.ifPresentOrElse(
                            entry -> strike(entry.number()),
                            () -> reply.set(Reply.asking(WindowWords.say("batch.nothing-to-strike")))));
        }));
    }

    /** What counted before something was written down, and what counts since. */
    private record Counted(List<Entry> before, List<Entry> after) {}

    /** Takes a step of the journal back, or does it again. */
    void record(Path batch, UndoHistory.Step step, BatchSteps.Told told) {
        record(batch, counted -> {}, told, failed -> history.forget(step));
    }

    private void record(Path batch, Consumer<Counted> done, BatchSteps.Told told) {
        record(batch, done, told, failed -> {});
    }

    private void record(Path batch, Consumer<Counted> done, BatchSteps.Told told, Consumer<Exception> refused) {
        Instant now = clock.get();
        work(threads.background(), refused, () -> {
            BatchAtHand opened = opener.open(batch);
            Recording recording = told.to(opened, now);
            Reply answer = new ReplyWriter(units).answer(recording, opened);
            BatchAtHand since = opener.open(batch);
            Counted counted =
                    new Counted(opened.journal().effective(), since.journal().effective());
            threads.ui().execute(() -> {
                reply.set(answer);
                if (recording instanceof Recording.Kept) done.accept(counted);
            });
            Shown found = shown(since, now);
            threads.ui().execute(() -> shown.set(Optional.of(found)));
        });
    }

    /** Plans the rest anew beside the old plan. */
    public void planRest() {
        file.ifPresent(batch -> {
            Instant now = clock.get();
            int ticket = asked.incrementAndGet();
            planning.set(true);
            work(threads.aside(), () -> {
                if (ticket != asked.get()) return;
                BatchAtHand alone = opener.open(batch);
                BatchAtHand opened = alone.beside(foresight.besides(alone));
                Optional<PieceChart> old = shown.get().map(Shown::chart);
                Proposal found = new ProposalWriter(opened, units, old).proposal(opened.replan(now));
                threads.ui().execute(() -> {
                    if (ticket != asked.get()) return;
                    planning.set(false);
                    proposal.set(Optional.of(found));
                });
            });
        });
    }

    /** True while the rest is planned anew; that may take long where it has no plan. */
    public ReadOnlyBooleanProperty planningProperty() {
        return planning.getReadOnlyProperty();
    }

    /** Gives up the new plan that is being worked out. */
    public void stop() {
        asked.incrementAndGet();
        planning.set(false);
    }

    /** Makes the new plan the plan of this batch; refused when somebody changed the batch since it was made. */
    public void accept() {
        proposal.get()
                .ifPresent(offered -> file.ifPresent(batch -> {
                    if (!(offered.result() instanceof Replanned replanned)) return;
                    Instant now = clock.get();
                    work(threads.background(), () -> {
                        String told = offered.accepted(replanned, units, now);
                        BatchAtHand since = opener.open(batch);
                        threads.ui().execute(() -> {
                            steps.accepted(batch, offered.batch(), since);
                            planned(told);
                        });
                        Shown found = shown(since, now);
                        threads.ui().execute(() -> shown.set(Optional.of(found)));
                    });
                }));
    }

    private void planned(String told) {
        proposal.set(Optional.empty());
        reply.set(Reply.nothing());
        calendarNote.set(told);
    }

    /** Puts another plan in place of the one there is. */
    void replace(Path batch, UndoHistory.Step step, BatchSteps.Replacing replacing) {
        Instant now = clock.get();
        work(threads.background(), failed -> history.forget(step), () -> {
            String told = Proposal.told(replacing.by(CalendarManner.of(List.of(batch), units), now), units);
            threads.ui().execute(() -> planned(told));
            Shown found = shown(opener.open(batch), now);
            threads.ui().execute(() -> shown.set(Optional.of(found)));
        });
    }

    /** Takes any other step of a batch back, or does it again. */
    void take(Path batch, UndoHistory.Step step, BatchSteps.Taking taking) {
        Instant now = clock.get();
        work(threads.background(), failed -> history.forget(step), () -> {
            taking.at(now);
            Shown found = shown(opener.open(batch), now);
            threads.ui().execute(() -> shown.set(Optional.of(found)));
        });
    }

    public void keepOld() {
        proposal.set(Optional.empty());
    }

    /** Writes the calendar file beside the batch. */
    public void calendar() {
        file.ifPresent(batch -> {
            Instant now = clock.get();
            Path calendar = batch.resolveSibling(batch.getFileName().toString().replaceFirst("\\.json$", ".ics"));
            work(threads.background(), () -> {
                opener.open(batch)
                        .calendar(calendar, CalendarManner.of(List.of(batch), units), now)
                        .calendar()
                        .ifPresent(this::told);
            });
        });
    }

    /** Writes all pieces into one calendar file, which keeps up with them from now on. */
    public void oneCalendar() {
        file.ifPresent(batch -> work(threads.background(), () -> told(foresight.oneCalendar(batch, clock.get()))));
    }

    private void told(CalendarUpdate update) {
        CalendarChanges changes = update.changes();
        String told = WindowWords.say(
                "batch.calendar-told",
                Integer.toString(changes.moved().size()),
                Integer.toString(changes.dropped().size()),
                Integer.toString(changes.added().size()),
                update.calendar());
        threads.ui().execute(() -> calendarNote.set(told));
    }

    private Shown shown(BatchAtHand batch, Instant now) throws StoreException {
        return new ShownWriter(foresight, units).shown(batch, now);
    }

    private interface Task {
        void run() throws StoreException, NotWrittenException;
    }

    private void work(Executor where, Task task) {
        work(where, failed -> {}, task);
    }

    /** What goes wrong is said, whatever it is, and the batch that is looked at is never another one. */
    private void work(Executor where, Consumer<Exception> refused, Task task) {
        where.execute(() -> {
            try {
                task.run();
            } catch (StoreException | NotWrittenException failed) {
                threads.ui().execute(() -> failed(failed, refused));
            } catch (IllegalArgumentException | IllegalStateException fault) {
                threads.ui()
                        .execute(() ->
                                failed(new IllegalStateException(WindowWords.say("batch.fault"), fault), refused));
            }
        });
    }

    private void failed(Exception failure, Consumer<Exception> refused) {
        planning.set(false);
        refused.accept(failure);
        boolean other = shown.get()
                .filter(known -> file.filter(known.batch().file()::equals).isEmpty())
                .isPresent();
        if (other) shown.set(Optional.empty());
        boolean kept =
                reply.get().outcome() == Reply.Outcome.KEPT && shown.get().isEmpty();
        reply.set(kept ? reply.get().doubting(failure) : Reply.failed(failure));
    }
}
