package piecewright.desktop.learned;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import piecewright.app.BatchAtHand;
import piecewright.app.CompareBatches;
import piecewright.app.LearnedReport;
import piecewright.app.NotWrittenException;
import piecewright.belief.Belief;
import piecewright.belief.Interval;
import piecewright.belief.Unknown;
import piecewright.desktop.batch.BatchViewModel.Opener;
import piecewright.desktop.learned.Compared.Course;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.learn.Comparison;
import piecewright.learn.Lessons.Outcome;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.LearnedPage;
import piecewright.text.WindowWords;

/** What batches taught of one lot or one house, and what one more batch would teach. */
public final class LearnedViewModel {
    private final Opener opener;
    private final Threads threads;
    private final Supplier<Instant> clock;
    private final LearnedPage page;
    private final ReadOnlyObjectWrapper<List<Subject>> subjects = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<Optional<Shown>> shown = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Compared>> compared = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<List<String>> lessons = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyStringWrapper note = new ReadOnlyStringWrapper("");
    private final AtomicInteger latest = new AtomicInteger();
    private Optional<Subject> chosen = Optional.empty();

    /** Something that batches may teach of. */
    public record Subject(Kind kind, Path file, String name) {
        /** Whether it is grain or a household with its kit. */
        public enum Kind {
            LOT,
            HOUSE
        }

        public Subject {
            Objects.requireNonNull(kind);
            Objects.requireNonNull(file);
            Objects.requireNonNull(name);
        }
    }

    /** What is believed of one subject. */
    public record Shown(Subject subject, String from, List<Row> rows) {
        public Shown {
            rows = List.copyOf(rows);
        }
    }

    /**
     * One unknown, before any batch and now, eight chances in ten.
     *
     * @param before on the axis on which its spread is even, 0 at the left end of its bar, 1 at the right; so is now
     */
    public record Row(String title, Bar before, Bar now, String beforeWords, String nowWords) {}

    /** An interval as shares of a bar's length. */
    public record Bar(double lowRatio, double middleRatio, double highRatio) {}

    public LearnedViewModel(Opener opener, Threads threads, Supplier<Instant> clock, DisplayUnits units) {
        this.opener = opener;
        this.threads = threads;
        this.clock = clock;
        this.units = units;
        this.page = new LearnedPage(units);
    }

    ReadOnlyObjectProperty<List<Subject>> subjectsProperty() {
        return subjects.getReadOnlyProperty();
    }

    ReadOnlyObjectProperty<Optional<Shown>> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    /** What came of learning from a batch, a sentence each. */
    ReadOnlyObjectProperty<List<String>> lessonsProperty() {
        return lessons.getReadOnlyProperty();
    }

    /** What went wrong; empty text when nothing did. */
    ReadOnlyStringProperty noteProperty() {
        return note.getReadOnlyProperty();
    }

    /** Offers what there is; what was looked at stays, or the first is. */
    public void offer(List<Subject> there) {
        subjects.set(List.copyOf(there));
        Optional<Subject> still = chosen.filter(there::contains);
        if (still.isPresent() || !there.isEmpty()) choose(still.orElseGet(() -> there.get(0)));
    }

    void choose(Subject subject) {
        chosen = Optional.of(subject);
        int ticket = latest.incrementAndGet();
        work(() -> {
            Shown found = shown(subject);
            threads.ui().execute(() -> {
                if (ticket == latest.get()) shown.set(Optional.of(found));
            });
        });
    }

    private Shown shown(Subject subject) throws StoreException {
        LearnedReport report = subject.kind() == Subject.Kind.LOT
                ? LearnedReport.ofLot(subject.file())
                : LearnedReport.ofHouse(subject.file());
        Belief now = report.learned().believed(report.stated());
        List<Row> rows = new ArrayList<>();
        for (Unknown unknown : report.stated().unknowns()) rows.add(row(unknown, report, now));
        return new Shown(subject, WindowWords.say("learned.says", report.name(), page.from(report.learned())), rows);
    }

    private Row row(Unknown unknown, LearnedReport report, Belief believed) {
        Interval before = report.stated().interval(unknown);
        Interval now = believed.interval(unknown);
        double low = Math.min(position(unknown, before.low()), position(unknown, now.low()));
        double high = Math.max(position(unknown, before.high()), position(unknown, now.high()));
        String nowWords = now.equals(before) ? WindowWords.say("learned.as-before") : page.span(unknown.trait(), now);
        return new Row(
                page.title(unknown, report.name()),
                bar(unknown, before, low, high),
                bar(unknown, now, low, high),
                page.span(unknown.trait(), before),
                nowWords);
    }

    private static double position(Unknown unknown, double value) {
        return unknown.trait().position(value);
    }

    private static Bar bar(Unknown unknown, Interval interval, double low, double high) {
        double whole = Math.max(1e-9, high - low);
        return new Bar(
                (position(unknown, interval.low()) - low) / whole,
                (position(unknown, interval.middle()) - low) / whole,
                (position(unknown, interval.high()) - low) / whole);
    }

    /** Learns from a batch and keeps what it taught beside the files of its lot and house. */
    void learn(Path batch) {
        work(() -> {
            BatchAtHand opened = opener.open(batch);
            Outcome outcome = opened.lessons().keep(opened.told(), clock.get());
            List<String> told = page.told(outcome);
            Path lot = opened.lessons().lotFile();
            threads.ui().execute(() -> {
                lessons.set(told);
                Optional<Subject> taught = subjects.get().stream()
                        .filter(subject -> subject.file().equals(lot))
                        .findFirst();
                taught.or(() -> chosen).ifPresent(this::choose);
            });
        });
    }

    /** In what two pieces differ, and how their outcomes do; empty before two are chosen. */
    ReadOnlyObjectProperty<Optional<Compared>> comparedProperty() {
        return compared.getReadOnlyProperty();
    }

    /** Holds two finished pieces against each other. */
    void compare(Path first, Path second) {
        compared.set(Optional.empty());
        work(() -> {
            BatchAtHand one = opener.open(first);
            BatchAtHand other = opener.open(second);
            Instant now = clock.get();
            Comparison comparison = CompareBatches.of(one, other, units, now);
            List<Course> courses = List.of(course(one, now), course(other, now));
            Compared found = Compared.of(comparison, courses, units);
            threads.ui().execute(() -> compared.set(Optional.of(found)));
        });
    }

    private static Course course(BatchAtHand batch, Instant now) throws StoreException {
        return Course.of(batch.where(now).orElseThrow(batch::noKit).plan());
    }

    private interface Task {
        void run() throws StoreException, NotWrittenException;
    }

    private void work(Task task) {
        threads.background().execute(() -> {
            String trouble = "";
            try {
                task.run();
            } catch (StoreException | NotWrittenException failed) {
                trouble = String.valueOf(failed.getMessage());
            }
            String sentence = trouble;
            threads.ui().execute(() -> note.set(sentence));
        });
    }
}
