package piecewright.desktop.batch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
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
import piecewright.desktop.timeline.ActMark;
import piecewright.desktop.timeline.ActMark.Standing;
import piecewright.desktop.timeline.BandWriter;
import piecewright.desktop.timeline.ChartWriter;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.PieceChart.Bands;
import piecewright.ensemble.Sureness;
import piecewright.journal.Entry;
import piecewright.plan.Act;
import piecewright.plan.Booking;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.reading.Outcome;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.EntryWords;
import piecewright.text.MomentFormat;
import piecewright.text.MovePage;
import piecewright.text.WherePage;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

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
    /** Entries that were struck out here and may come back, the last one first. */
    private final Deque<Entry> struck = new ArrayDeque<>();

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

    public BatchViewModel(
            Opener opener, Foresight foresight, Threads threads, Supplier<Instant> clock, DisplayUnits units) {
        this.foresight = foresight;
        shown.addListener((batch, before, now) -> foresee(now));
        this.opener = opener;
        this.threads = threads;
        this.clock = clock;
        this.units = units;
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
            struck.clear();
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
        struck.clear();
        record((opened, now) -> opened.recordLine(line, units, now));
    }

    private interface Told {
        Recording to(BatchAtHand batch, Instant now) throws StoreException, NotWrittenException;
    }

    private void record(Told told) {
        file.ifPresent(batch -> {
            Instant now = clock.get();
            work(threads.background(), () -> {
                BatchAtHand opened = opener.open(batch);
                Recording recording = told.to(opened, now);
                Reply answer = answer(recording, opened);
                Shown found = shown(opener.open(batch), now);
                threads.ui().execute(() -> {
                    reply.set(answer);
                    shown.set(Optional.of(found));
                });
            });
        });
    }

    /** Takes the last entry back; it stays in the journal, struck out. */
    public void undo() {
        shown.get().ifPresent(known -> {
            List<Entry> effective = known.batch().journal().effective();
            effective.stream().max(Comparator.comparingInt(Entry::number)).ifPresent(last -> {
                struck.push(last);
                record((opened, now) -> opened.recordLine("void " + last.number(), units, now));
            });
        });
    }

    /** Lets the entry that was struck out last count again. */
    public void redo() {
        if (struck.isEmpty()) return;
        Entry last = struck.pop();
        record((opened, now) -> opened.restore(last, now));
    }

    private Reply answer(Recording recording, BatchAtHand batch) {
        if (recording instanceof Recording.Asked asked) {
            return new Reply(
                    Reply.Outcome.ASKED,
                    List.of(),
                    List.of(asked.asked().question()),
                    asked.asked().offers().stream().map(Outcome.Offer::line).toList());
        }
        if (recording instanceof Recording.Refused refused) {
            return new Reply(Reply.Outcome.ASKED, List.of(), List.of(refused.sentence()), List.of());
        }
        Recording.Kept kept = (Recording.Kept) recording;
        EntryWords entries = new EntryWords(units, batch.zone());
        WherePage questions = new WherePage(units, batch.zone());
        return new Reply(
                Reply.Outcome.KEPT,
                kept.entries().stream().map(entries::sentence).toList(),
                kept.questions().stream().map(questions::question).toList(),
                List.of());
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
                Proposal found = proposal(opened, opened.replan(now));
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

    private Proposal proposal(BatchAtHand opened, ReplanResult result) {
        MovePage page = new MovePage(units, opened.zone(), opened.journal());
        if (result instanceof Replanned replanned) {
            PieceChart chart = chart(opened, replanned.plan(), result);
            MomentFormat moments = new MomentFormat(opened.zone(), units.locale());
            List<Proposal.Moved> moves = replanned.moves().stream()
                    .map(move -> new Proposal.Moved(
                            title(chart, move.actId()),
                            move.from().map(moments::moment).orElse(""),
                            move.to().map(moments::moment).orElse(""),
                            WindowWords.say("batch.because", page.because(move.because()))))
                    .toList();
            List<String> sentences = new ArrayList<>(moves.isEmpty() ? page.moved(replanned.moves()) : List.of());
            sentences.addAll(page.lost(replanned.amends()));
            return new Proposal(opened, result, Optional.of(chart), moves, sentences);
        }
        Wording wording = new Wording(units, opened.zone());
        List<String> why = ((ReplanResult.NotPossible) result)
                .obstacles().stream().map(wording::obstacle).toList();
        return new Proposal(opened, result, Optional.empty(), List.of(), why);
    }

    /** What an act is called in the new plan, or in the old one where that alone has it. */
    private String title(PieceChart chart, String actId) {
        return chart.act(actId)
                .or(() -> shown.get().flatMap(old -> old.chart().act(actId)))
                .map(ActMark::title)
                .orElse(actId);
    }

    private PieceChart chart(BatchAtHand opened, Plan plan, ReplanResult result) {
        return new ChartWriter(opened.request(), plan, units)
                .chart(act -> result.account().did(act.id()) ? Standing.DONE : Standing.PLANNED)
                .withDots(Dots.of(opened.journal(), plan));
    }

    /** Makes the new plan the plan of this batch; refused when somebody changed the batch since it was made. */
    public void accept() {
        proposal.get()
                .ifPresent(offered -> file.ifPresent(batch -> {
                    if (!(offered.result() instanceof Replanned replanned)) return;
                    Instant now = clock.get();
                    work(threads.background(), () -> {
                        String told = offered.accepted(replanned, units, now);
                        Shown found = shown(opener.open(batch), now);
                        threads.ui().execute(() -> {
                            shown.set(Optional.of(found));
                            proposal.set(Optional.empty());
                            reply.set(Reply.nothing());
                            calendarNote.set(told);
                        });
                    });
                }));
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
        Where where = batch.where(now)
                .orElseThrow(() -> new StoreException(
                        batch.file(), "its house has no kit that holds this batch any more; mend the house"));
        Optional<String> next = where.next().act().map(Act::id);
        PlanRequest among = batch.request().beside(foresight.besides(batch));
        PieceChart chart = new ChartWriter(among, where.plan(), units)
                .chart(act -> where.account().did(act.id())
                        ? Standing.DONE
                        : next.filter(act.id()::equals).isPresent() ? Standing.NEXT : Standing.PLANNED)
                .withDots(Dots.of(batch.journal(), where.plan()));
        return new Shown(batch, where, chart, new WherePage(units, batch.zone()).sentences(where));
    }

    private interface Task {
        void run() throws StoreException, NotWrittenException;
    }

    private void work(Executor where, Task task) {
        where.execute(() -> {
            try {
                task.run();
            } catch (StoreException | NotWrittenException failed) {
                threads.ui().execute(() -> {
                    planning.set(false);
                    reply.set(Reply.failed(failed));
                });
            }
        });
    }
}
