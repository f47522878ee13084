package piecewright.desktop.batch;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import piecewright.app.BatchAtHand;
import piecewright.app.FinishBatch;
import piecewright.app.FinishBatch.Ending;
import piecewright.app.NotWrittenException;
import piecewright.app.TakeBack.Knowing;
import piecewright.desktop.batch.BatchSteps.Closing;
import piecewright.desktop.plan.WishViewModel.Threads;
import piecewright.replan.Finished;
import piecewright.store.PlanTimes;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.FinishPage;
import piecewright.text.LearnedPage;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;
import piecewright.text.WherePage;
import piecewright.text.WindowWords;

/** The end of a piece: its malt weighed, its colour compared, what to do otherwise next time; then it is closed. */
public final class FinishViewModel {
    private final BatchViewModel piece;
    private final Threads threads;
    private final Supplier<Instant> clock;
    private final DisplayUnits units;
    private final ReadOnlyObjectWrapper<Map<Field, String>> wrong = new ReadOnlyObjectWrapper<>(Map.of());
    private final ReadOnlyObjectWrapper<List<String>> told = new ReadOnlyObjectWrapper<>(List.of());

    private final ReadOnlyBooleanWrapper changed = new ReadOnlyBooleanWrapper();
    private final ReadOnlyObjectWrapper<Optional<Typed>> asked = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Path>> of = new ReadOnlyObjectWrapper<>(Optional.empty());

    /** What is typed, and what all of it together may be wrong with. */
    enum Field {
        WEIGHT,
        COLOUR,
        WHOLE
    }

    /** What is typed, each empty where it was recorded before or is not known. */
    record Typed(String weight, String colour, String note) {}

    /** Follows the piece that is looked at. */
    public FinishViewModel(BatchViewModel piece, Threads threads, Supplier<Instant> clock, DisplayUnits units) {
        this.piece = piece;
        this.threads = threads;
        this.clock = clock;
        this.units = units;
        piece.shownProperty().addListener((shown, before, now) -> {
            boolean other = !before.map(each -> each.batch().file())
                    .equals(now.map(each -> each.batch().file()));
            if (other) {
                told.set(List.of());
                wrong.set(Map.of());
                asked.set(Optional.empty());
                of.set(now.map(each -> each.batch().file()));
            }
            if (isClosed(before) && !isClosed(now)) told.set(List.of());
            changed.set(now.filter(each -> FinishBatch.changed(each.batch())).isPresent());
            if (isClosed(now)) now.ifPresent(this::closed);
        });
    }

    private static boolean isClosed(Optional<BatchViewModel.Shown> shown) {
        return shown.flatMap(each -> each.batch().finishedAt()).isPresent();
    }

    /** Which piece is to be closed. */
    ReadOnlyObjectProperty<Optional<Path>> ofProperty() {
        return of.getReadOnlyProperty();
    }

    /** What is wrong with each; nothing of what is right. */
    ReadOnlyObjectProperty<Map<Field, String>> wrongProperty() {
        return wrong.getReadOnlyProperty();
    }

    /** What came of it, a sentence each; none before it is closed. */
    ReadOnlyObjectProperty<List<String>> toldProperty() {
        return told.getReadOnlyProperty();
    }

    /** Whether a closed piece was put right since: it can be closed again. */
    ReadOnlyBooleanProperty changedProperty() {
        return changed.getReadOnlyProperty();
    }

    /** What was typed when it was asked whether wet malt is to be closed all the same; the same again closes it. */
    ReadOnlyObjectProperty<Optional<Typed>> askedProperty() {
        return asked.getReadOnlyProperty();
    }

    /** Whether there is malt to weigh. */
    static boolean isMalt(BatchViewModel.Shown shown) {
        return Finished.isMalt(shown.where().account());
    }

    void finish(Typed typed) {
        Map<Field, String> wrongs = new EnumMap<>(Field.class);
        QuantityParser parser = QuantityParser.forPerson(units);
        OptionalDouble maltKg = read(typed.weight(), parser::massKg, Field.WEIGHT, wrongs);
        OptionalDouble colourEbc = read(typed.colour(), parser::colourEbc, Field.COLOUR, wrongs);
        wrong.set(Map.copyOf(wrongs));
        if (!wrongs.isEmpty()) return;
        List<String> notes =
                typed.note().isBlank() ? List.of() : List.of(typed.note().strip());
        boolean evenWet = asked.get().filter(typed::equals).isPresent();
        asked.set(Optional.empty());
        FinishBatch.Told said = new FinishBatch.Told(maltKg, colourEbc, notes, evenWet);
        piece.file().ifPresent(file -> threads.background().execute(() -> close(file, said, typed)));
    }

    /** Reads what was typed into a field. */
    private interface Reader {
        double read(String typed) throws UnreadableException;
    }

    private static OptionalDouble read(String typed, Reader reader, Field field, Map<Field, String> wrongs) {
        if (typed.isBlank()) return OptionalDouble.empty();
        try {
            double value = reader.read(typed);
            if (value > 0) return OptionalDouble.of(value);
            wrongs.put(field, WindowWords.say("finish.nothing"));
        } catch (UnreadableException unreadable) {
            wrongs.put(field, String.valueOf(unreadable.getMessage()));
        }
        return OptionalDouble.empty();
    }

    private void close(Path file, FinishBatch.Told said, Typed typed) {
        List<String> sentences = List.of();
        String refused = "";
        try {
            Knowing before = Knowing.of(piece.opener().open(file));
            Ending ending = FinishBatch.of(before.batch(), said, clock.get());
            if (ending instanceof Ending.NotYet not) {
                refused = WindowWords.say("finish.not-yet."
                        + not.why().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            } else if (ending instanceof Ending.Wet wet) {
                refused = new WherePage(units, before.batch().zone()).wetMalt(wet.malt());
                threads.ui().execute(() -> asked.set(Optional.of(typed)));
            } else {
                sentences = sentences((Ending.Closed) ending);
                Closing closing = new Closing(before, Knowing.of(piece.opener().open(file)));
                threads.ui().execute(() -> piece.steps().finished(file, closing, now -> again(file, said, now)));
            }
        } catch (StoreException | NotWrittenException failed) {
            refused = String.valueOf(failed.getMessage());
        }
        show(sentences, refused);
    }

    private Closing again(Path file, FinishBatch.Told said, Instant now) throws StoreException, NotWrittenException {
        Knowing before = Knowing.of(piece.opener().open(file));
        FinishBatch.of(before.batch(), said, now);
        return new Closing(before, Knowing.of(piece.opener().open(file)));
    }

    private void show(List<String> sentences, String refused) {
        threads.ui().execute(() -> {
            if (!refused.isEmpty()) wrong.set(Map.of(Field.WHOLE, refused));
            if (sentences.isEmpty()) return;
            told.set(sentences);
            piece.read();
        });
    }

    private List<String> sentences(Ending.Closed closed) {
        List<String> all = new ArrayList<>(sentences(closed.finished(), closed.expected()));
        all.addAll(new LearnedPage(units).told(closed.lessons()));
        return all;
    }

    private List<String> sentences(Finished finished, PlanTimes.Expected expected) {
        return new FinishPage(units)
                .sentences(
                        finished, new FinishPage.Expected(expected.grainKg(), expected.maltKg(), expected.colourEbc()));
    }

    /** A piece that was closed before says again what came of it. */
    private void closed(BatchViewModel.Shown shown) {
        if (!told.get().isEmpty() && !changed.get()) return;
        BatchAtHand batch = shown.batch();
        Instant now = clock.get();
        threads.background().execute(() -> {
            try {
                Optional<Finished> finished = batch.finished(now);
                if (finished.isEmpty()) return;
                List<String> again = sentences(finished.get(), batch.expected());
                threads.ui().execute(() -> told.set(again));
            } catch (StoreException unreadable) {
                show(List.of(), String.valueOf(unreadable.getMessage()));
            }
        });
    }
}
