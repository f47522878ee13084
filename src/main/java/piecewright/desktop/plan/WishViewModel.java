package piecewright.desktop.plan;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import piecewright.app.Drafting.Answer;
import piecewright.desktop.plan.Problem.Word;
import piecewright.desktop.shell.UndoHistory;
import piecewright.plan.Booking;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Watch;
import piecewright.remedy.Change;
import piecewright.remedy.Remedy;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WindowWords;
import piecewright.text.Wording;

/** The sentence and its answer. Every change asks for a new answer; only the latest is shown. */
public final class WishViewModel {
    private static final double MOST_KG = 1000;
    private static final double MOST_EBC = 1600;

    private final Answers answers;
    private final Executor background;
    private final Executor aside;
    private final Executor ui;
    private final LocalDate today;
    private final DisplayUnits units;

    private final Undoable<Wish> wish;
    private final UndoHistory history;
    private final ReadOnlyObjectWrapper<Optional<Drafted>> drafted = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ObservableList<Problem> problems = FXCollections.observableArrayList();
    private final ObservableList<Remedy> remedies = FXCollections.observableArrayList();
    /** Held, because a view of a list is forgotten with its listeners when nobody holds it. */
    private final ObservableList<Problem> problemsShown = FXCollections.unmodifiableObservableList(problems);

    private final ObservableList<Remedy> remediesShown = FXCollections.unmodifiableObservableList(remedies);
    private final ReadOnlyBooleanWrapper working = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper seeking = new ReadOnlyBooleanWrapper();
    private final ReadOnlyBooleanWrapper current = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Map<Word, String>> typed = new ReadOnlyObjectWrapper<>(Map.of());
    private final ReadOnlyObjectWrapper<List<Booking>> besides = new ReadOnlyObjectWrapper<>(List.of());
    private final AtomicInteger latest = new AtomicInteger();
    /** The answer shown last. */
    private Optional<Answer> shown = Optional.empty();

    /** The use cases asked. */
    public interface Answers {
        /** @param watch ends it with a CancellationException once nobody waits for it */
        Answer answer(Wish wish, Watch watch);

        /** @param watch ends it with a CancellationException once nobody waits for them */
        List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles, Watch watch);
    }

    /**
     * Where the work of a view model is done, and where its answers are shown.
     *
     * @param background one task after the other
     * @param aside what takes long and must not hold up the others
     */
    public record Threads(Executor background, Executor aside, Executor ui) {}

    /** Whose day and units count. */
    public record Person(LocalDate today, DisplayUnits units) {}

    public WishViewModel(Wish first, Answers answers, Threads threads, Person person, UndoHistory history) {
        this.answers = answers;
        this.aside = threads.aside();
        this.background = threads.background();
        this.ui = threads.ui();
        this.today = person.today();
        this.units = person.units();
        this.history = history;
        this.wish = new Undoable<>(first, history, WindowWords.say("undo.of.wish"));
        wish.whenTaken(() -> typed.set(Map.of()));
        wish.valueProperty().addListener((property, before, now) -> ask());
        ask();
    }

    /** Where changes are kept to be taken back. */
    UndoHistory history() {
        return history;
    }

    public ReadOnlyObjectProperty<Wish> wishProperty() {
        return wish.valueProperty();
    }

    /** The last plan there was; it stays while a new one is worked out. */
    public ReadOnlyObjectProperty<Optional<Drafted>> draftedProperty() {
        return drafted.getReadOnlyProperty();
    }

    /** True when the plan shown answers the sentence as it stands. */
    public ReadOnlyBooleanProperty currentProperty() {
        return current.getReadOnlyProperty();
    }

    public ReadOnlyBooleanProperty workingProperty() {
        return working.getReadOnlyProperty();
    }

    /** True while changes that might help are tried. */
    public ReadOnlyBooleanProperty seekingProperty() {
        return seeking.getReadOnlyProperty();
    }

    public ObservableList<Problem> problems() {
        return problemsShown;
    }

    /** Changes that were planned and found to help; they follow the problems a little later. */
    public ObservableList<Remedy> remedies() {
        return remediesShown;
    }

    /** What is wrong with words as they were typed; a word with nothing wrong is not among them. */
    public ReadOnlyObjectProperty<Map<Word, String>> typedProperty() {
        return typed.getReadOnlyProperty();
    }

    /** Pieces under way beside which the last answer was planned. */
    public ReadOnlyObjectProperty<List<Booking>> besidesProperty() {
        return besides.getReadOnlyProperty();
    }

    public void change(Wish changed) {
        typed.set(Map.of());
        wish.change(changed);
    }

    private void wrong(Word word, String why) {
        Map<Word, String> all = new EnumMap<>(Word.class);
        all.putAll(typed.get());
        all.put(word, why);
        typed.set(Map.copyOf(all));
    }

    /** A word as it stands is right: what was wrong with it is forgotten, and nothing else is. */
    private void right(Word word, Wish changed) {
        Map<Word, String> left = new EnumMap<>(Word.class);
        left.putAll(typed.get());
        left.remove(word);
        typed.set(Map.copyOf(left));
        wish.change(changed);
    }

    /** The amount of malt as somebody types it, in either family of units. */
    public void typeAmount(String text) {
        try {
            double maltKg = QuantityParser.forPerson(units).massKg(text);
            if (maltKg > 0 && maltKg <= MOST_KG) right(Word.AMOUNT, wish.get().withMaltKg(maltKg));
            else
                wrong(
                        Word.AMOUNT,
                        WindowWords.say("wish.amount-range", quantities().roughMass(MOST_KG)));
        } catch (UnreadableException unreadable) {
            wrong(Word.AMOUNT, String.valueOf(unreadable.getMessage()));
        }
    }

    /** The colour as somebody types it, on any scale; nothing for what is usual for the style. */
    public void typeColour(String text) {
        try {
            double colourEbc = text.isBlank()
                    ? Double.NaN
                    : QuantityParser.forPerson(units).colourEbc(text);
            if (text.isBlank()) right(Word.COLOUR, wish.get().withColourEbc(OptionalDouble.empty()));
            else if (colourEbc > 0 && colourEbc <= MOST_EBC) {
                right(Word.COLOUR, wish.get().withColourEbc(OptionalDouble.of(colourEbc)));
            } else
                wrong(Word.COLOUR, WindowWords.say("colour.range", quantities().colour(MOST_EBC)));
        } catch (UnreadableException unreadable) {
            wrong(Word.COLOUR, String.valueOf(unreadable.getMessage()));
        }
    }

    private QuantityFormat quantities() {
        return new QuantityFormat(units);
    }

    /** A day that cannot be read as it was typed. */
    public void unreadableDay(String text) {
        wrong(Word.READY_BY, WindowWords.say("wish.day-unreadable", text.strip()));
    }

    /** A day before today is refused and nothing changes. */
    public void chooseReadyBy(LocalDate day) {
        if (day.isBefore(today)) wrong(Word.READY_BY, WindowWords.say("wish.day-over"));
        else right(Word.READY_BY, wish.get().withReadyBy(day));
    }

    /** True when the sentence itself can take the change; others change the house or the style. */
    static boolean ofTheSentence(Remedy remedy) {
        return remedy.change() instanceof Change.LaterDay || remedy.change() instanceof Change.SmallerPiece;
    }

    public void take(Remedy remedy) {
        if (remedy.change() instanceof Change.LaterDay later) chooseReadyBy(later.readyBy());
        if (remedy.change() instanceof Change.SmallerPiece smaller)
            change(wish.get().withMaltKg(smaller.massKg()));
    }

    /** Gives up the answer that is being worked out; the last plan stays. */
    public void stop() {
        latest.incrementAndGet();
        working.set(false);
    }

    /** Asks again, for a file that changed. */
    public void ask() {
        int ticket = latest.incrementAndGet();
        Wish asked = wish.get();
        working.set(true);
        seeking.set(false);
        current.set(false);
        background.execute(() -> {
            if (ticket != latest.get()) return;
            whileWanted(ticket, watch -> {
                Answer answer = answers.answer(asked, watch);
                Optional<Drafted> found = found(answer);
                ui.execute(() -> {
                    if (ticket == latest.get()) show(answer, found, ticket);
                });
            });
        });
    }

    private Optional<Drafted> found(Answer answer) {
        return answer instanceof Answer.Read read && read.result() instanceof PlanResult.Planned planned
                ? Optional.of(Drafted.of(read.wish(), planned.plan(), units))
                : Optional.empty();
    }

    private void show(Answer answer, Optional<Drafted> found, int ticket) {
        working.set(false);
        boolean told = !remedies.isEmpty() && shown.equals(Optional.of(answer));
        shown = Optional.of(answer);
        // asked again for a file that had no part in it: what somebody is about to press stays where it is
        if (told) return;
        remedies.clear();
        problems.setAll(problemsOf(answer));
        if (answer instanceof Answer.Read read)
            besides.set(read.wish().request().besides());
        if (found.isPresent()) {
            drafted.set(found);
            current.set(true);
        } else if (answer instanceof Answer.Read read && read.result() instanceof PlanResult.NotPossible not) {
            seekRemedies(read.wish().request(), not.obstacles(), ticket);
        }
    }

    private List<Problem> problemsOf(Answer answer) {
        if (answer instanceof Answer.Unreadable unreadable) {
            return List.of(new Problem(Problem.Word.LOT, unreadable.sentence()));
        }
        Answer.Read read = (Answer.Read) answer;
        Wording wording = new Wording(units, read.wish().request().house().zone());
        return read.result()
                .match(
                        planned -> List.of(),
                        not -> not.obstacles().stream()
                                .map(obstacle -> new Problem(Problem.wordOf(obstacle), wording.obstacle(obstacle)))
                                .toList());
    }

    private void seekRemedies(PlanRequest request, List<Obstacle> obstacles, int ticket) {
        seeking.set(true);
        aside.execute(() -> {
            if (ticket != latest.get()) return;
            whileWanted(ticket, watch -> {
                List<Remedy> found = answers.remedies(request, obstacles, watch);
                ui.execute(() -> {
                    if (ticket != latest.get()) return;
                    seeking.set(false);
                    remedies.setAll(found);
                });
            });
        });
    }

    /** Works something out until the wish is said otherwise or stopped; then it ends at once, unshown. */
    private void whileWanted(int ticket, Consumer<Watch> work) {
        try {
            work.accept(() -> {
                if (ticket != latest.get()) throw new CancellationException("nobody waits for it any more");
            });
        } catch (CancellationException unwanted) {
            // what is shown stays
        }
    }
}
