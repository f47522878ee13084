package piecewright.desktop.batch;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.app.AllActs;
import piecewright.app.BatchAtHand;
import piecewright.app.Workspace;
import piecewright.app.files.EachFile;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.plan.Act;
import piecewright.replan.Finished;
import piecewright.replan.Where;
import piecewright.store.StoreException;
import piecewright.text.ActsAhead.Ahead;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** Everything that is on the go: a sentence for each piece, and the acts of the next two days in time order. */
public final class GoingViewModel {
    private static final Duration SOON = Duration.ofHours(48);

    private final Workspace workspace;
    private final BatchViewModel.Opener opener;
    private final Threads threads;
    private final Supplier<Instant> clock;
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<Going> going = new ReadOnlyObjectWrapper<>(Going.nothing());
    private final AtomicInteger latest = new AtomicInteger();

    /** What is on the go. */
    public record Going(List<Piece> pieces, List<Soon> soon, List<String> refusals) {
        public Going {
            pieces = List.copyOf(pieces);
            soon = List.copyOf(soon);
            refusals = List.copyOf(refusals);
        }

        static Going nothing() {
            return new Going(List.of(), List.of(), List.of());
        }
    }

    /**
     * One piece in a sentence.
     *
     * @param moisture its moisture so far and to come, percent, evenly in time, for a small outline
     */
    public record Piece(
            Path file, Stage stage, String title, String sentence, List<Double> moisture, double doneRatio) {
        public Piece {
            moisture = List.copyOf(moisture);
        }
    }

    /** Whether a piece still wants hands and kit. */
    public enum Stage {
        UNDER_WAY,
        CLOSED
    }

    /** An act of the next two days. */
    public record Soon(Path file, String actId, String title, String piece, Instant at, When when) {}

    /** The day an act comes on and its hour, and both at once. */
    public record When(String day, String clock, String moment) {}

    public GoingViewModel(
            Workspace workspace,
            BatchViewModel.Opener opener,
            Threads threads,
            Supplier<Instant> clock,
            DisplayUnits units) {
        this.workspace = workspace;
        this.opener = opener;
        this.threads = threads;
        this.clock = clock;
        this.units = units;
    }

    public ReadOnlyObjectProperty<Going> goingProperty() {
        return going.getReadOnlyProperty();
    }

    /** Looks at every batch again. */
    public void read() {
        int ticket = latest.incrementAndGet();
        Instant now = clock.get();
        threads.background().execute(() -> {
            if (ticket != latest.get()) return;
            Going found = found(now);
            threads.ui().execute(() -> {
                if (ticket == latest.get()) going.set(found);
            });
        });
    }

    private Going found(Instant now) {
        List<Piece> pieces = new ArrayList<>();
        List<Soon> soon = new ArrayList<>();
        EachFile each = new EachFile();
        for (Path file : workspace.batchFiles(each)) {
            each.read(file, one -> one(one, now)).ifPresent(found -> {
                pieces.add(found.piece());
                soon.addAll(found.soon());
            });
        }
        soon.sort(Comparator.comparing(Soon::at));
        workspace.contents().refusals().forEach(each::leaveOut);
        return new Going(pieces, soon, each.refusals());
    }

    private record One(Piece piece, List<Soon> soon) {}

    private One one(Path file, Instant now) throws StoreException {
        BatchAtHand batch = opener.open(file);
        Where where = batch.where(now).orElseThrow(batch::noKit);
        return new One(piece(file, batch, where), soon(file, batch, where));
    }

    private Piece piece(Path file, BatchAtHand batch, Where where) {
        Wording wording = new Wording(units, batch.zone());
        MomentFormat moments = new MomentFormat(batch.zone(), units.locale());
        Optional<Act> next = where.next().act();
        String title = WindowWords.say(
                "batch.title",
                where.plan().subject().title(),
                where.plan().subject().lot());
        Optional<Finished> closed = batch.finishedAt().isPresent() ? batch.finished(where.now()) : Optional.empty();
        Stage stage = batch.finishedAt().isPresent() ? Stage.CLOSED : Stage.UNDER_WAY;
        String sentence = closed.isPresent()
                ? outcome(closed.get())
                : next.map(act -> WindowWords.say("going.next", wording.actTitle(act), moments.moment(act.startsAt())))
                        .orElseGet(() -> WindowWords.say(
                                "going.resting",
                                moments.moment(where.plan().subject().readyAt())));
        List<Double> moisture = new ArrayList<>();
        var course = where.plan().course();
        for (int i = 0; i < course.size(); i += Math.max(1, course.size() / 60)) {
            moisture.add(course.get(i).state().mass().moisture().wetBasisPercent());
        }
        Instant first = where.plan().startsAt();
        double whole =
                Duration.between(first, course.get(course.size() - 1).at()).toMinutes();
        double done = Duration.between(first, where.now()).toMinutes() / Math.max(1, whole);
        return new Piece(file, stage, title, sentence, moisture, Math.max(0, Math.min(1, done)));
    }

    private String outcome(Finished closed) {
        QuantityFormat quantities = new QuantityFormat(units);
        return WindowWords.say(
                "going.closed",
                quantities.mass(closed.outcome().maltKg()),
                quantities.percent(closed.outcome().yieldFraction()));
    }

    private static When when(Instant at, Instant now, MomentFormat moments) {
        LocalDate day = LocalDate.ofInstant(at, moments.zone());
        long ahead = ChronoUnit.DAYS.between(LocalDate.ofInstant(now, moments.zone()), day);
        String named = ahead <= 0
                ? WindowWords.say(at.isBefore(now) ? "going.overdue" : "going.today", moments.day(day))
                : ahead == 1 ? WindowWords.say("going.tomorrow", moments.day(day)) : moments.day(day);
        return new When(named, moments.clock(at), moments.moment(at));
    }

    private List<Soon> soon(Path file, BatchAtHand batch, Where where) throws StoreException {
        MomentFormat moments = new MomentFormat(batch.zone(), units.locale());
        List<Soon> soon = new ArrayList<>();
        for (Ahead ahead : AllActs.of(batch, where, SOON)) {
            soon.add(new Soon(
                    file,
                    ahead.id(),
                    ahead.title(),
                    where.plan().subject().title(),
                    ahead.startsAt(),
                    when(ahead.startsAt(), where.now(), moments)));
        }
        return soon;
    }
}
