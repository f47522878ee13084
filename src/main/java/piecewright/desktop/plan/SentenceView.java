package piecewright.desktop.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.scene.control.Control;
import javafx.scene.control.DatePicker;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.util.StringConverter;
import piecewright.app.Workspace.Kept;
import piecewright.app.Workspace.Origin;
import piecewright.desktop.plan.Problem.Word;
import piecewright.grain.GrainLot;
import piecewright.style.MaltStyle;
import piecewright.text.DisplayUnits;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** The wish as a sentence whose bold words are controls. */
final class SentenceView {
    private static final PseudoClass TROUBLED = PseudoClass.getPseudoClass("troubled");

    private final WishViewModel model;
    private final DisplayUnits units;
    private final FlowPane pane = new FlowPane(10, 8);
    private final Map<Word, Control> words = new EnumMap<>(Word.class);
    private final TextField amount = new TextField();
    private final DatePicker readyBy = new DatePicker();
    private final MenuButton style = new MenuButton();
    private final MenuButton lot = new MenuButton();
    private final MenuButton house = new MenuButton();

    SentenceView(WishViewModel model, DisplayUnits units) {
        this.model = model;
        this.units = units;
        pane.getStyleClass().add("sentence");
        word(Word.AMOUNT, amount, "wish-amount");
        word(Word.STYLE, style, "wish-style");
        word(Word.READY_BY, readyBy, "wish-ready-by");
        word(Word.LOT, lot, "wish-lot");
        word(Word.HOUSE, house, "wish-house");
        pane.getChildren()
                .addAll(
                        led("i-want", amount),
                        led("of", style),
                        led("ready-by", readyBy),
                        led("from", lot),
                        led("in", house));
        amount.setOnAction(event -> model.typeAmount(amount.getText()));
        amount.focusedProperty().addListener((focused, before, now) -> {
            if (!now) typedUnlessShown();
        });
        readyBy.setConverter(new DayConverter());
        readyBy.valueProperty().addListener((value, before, now) -> {
            if (now != null) model.chooseReadyBy(now);
        });
        model.wishProperty().addListener((wish, before, now) -> show(now));
        show(model.wishProperty().get());
    }

    FlowPane node() {
        return pane;
    }

    Optional<Control> word(Word word) {
        return Optional.ofNullable(words.get(word));
    }

    private void typedUnlessShown() {
        if (!amount.getText().equals(amountText(model.wishProperty().get()))) model.typeAmount(amount.getText());
    }

    private void word(Word word, Control control, String id) {
        control.setId(id);
        control.getStyleClass().add("word");
        control.setAccessibleText(WindowWords.say("wish.spoken." + id.substring("wish-".length())));
        words.put(word, control);
    }

    /** Words and the control they lead to stay on one line. */
    private static HBox led(String key, Control control) {
        HBox pair = new HBox(8, said(key), control);
        pair.getStyleClass().add("led");
        return pair;
    }

    private static Label said(String key) {
        Label label = new Label(WindowWords.say("wish." + key));
        label.getStyleClass().add("said");
        return label;
    }

    void choices(Choices choices) {
        items(style, choices.styles(), MaltStyle::title, chosen -> change(wish -> wish.withStyle(chosen)));
        items(
                lot,
                choices.lots(),
                kept -> marked(kept, lotText(kept)),
                chosen -> change(wish -> wish.withLot(chosen.file())));
        items(
                house,
                choices.houses(),
                kept -> marked(kept, kept.thing().name()),
                chosen -> change(wish -> wish.withHouse(chosen.file())));
        shown = choices;
        show(model.wishProperty().get());
    }

    private Choices shown = new Choices(List.of(), List.of(), List.of());

    private void change(Function<Wish, Wish> change) {
        model.change(change.apply(model.wishProperty().get()));
    }

    private static <T> void items(
            MenuButton button, List<T> things, Function<T, String> text, java.util.function.Consumer<T> chosen) {
        button.getItems().clear();
        for (T thing : things) {
            MenuItem item = new MenuItem(text.apply(thing));
            item.setMnemonicParsing(false);
            item.setOnAction(event -> chosen.accept(thing));
            button.getItems().add(item);
        }
    }

    private void show(Wish wish) {
        amount.setText(amountText(wish));
        amount.setPrefColumnCount(Math.max(4, amount.getText().length()));
        readyBy.setValue(wish.readyBy());
        style.setText(wish.style().title());
        shown.lots().stream()
                .filter(kept -> kept.file().equals(wish.lot()))
                .findFirst()
                .ifPresent(kept -> lot.setText(lotText(kept)));
        shown.houses().stream()
                .filter(kept -> kept.file().equals(wish.house()))
                .findFirst()
                .ifPresent(kept -> house.setText(kept.thing().name()));
    }

    private String amountText(Wish wish) {
        return new QuantityFormat(units).roughMass(wish.maltKg());
    }

    private String lotText(Kept<GrainLot> kept) {
        GrainLot grain = kept.thing();
        QuantityFormat quantities = new QuantityFormat(units);
        String moisture = quantities.moisture(grain.moisture().moisture());
        return grain.germinativeEnergyFraction().isPresent()
                ? WindowWords.say(
                        "wish.lot-tested",
                        grain.name(),
                        moisture,
                        quantities.percent(grain.germinativeEnergyFraction().getAsDouble()))
                : WindowWords.say("wish.lot-untested", grain.name(), moisture);
    }

    private static String marked(Kept<?> kept, String text) {
        return kept.origin() == Origin.DEMO ? WindowWords.say("demo.marked", text) : text;
    }

    /** Marks the words that cause trouble. */
    void trouble(List<Problem> problems, boolean ofAmount) {
        words.forEach((word, control) -> control.pseudoClassStateChanged(
                TROUBLED,
                word == Word.AMOUNT && ofAmount || problems.stream().anyMatch(problem -> problem.word() == word)));
    }

    /** A day as people write it; what cannot be read changes nothing. */
    private final class DayConverter extends StringConverter<LocalDate> {
        private final DateTimeFormatter shownAs = DateTimeFormatter.ofPattern("EEE d MMM yyyy", units.locale());
        private final List<DateTimeFormatter> read = List.of(
                shownAs,
                DateTimeFormatter.ISO_LOCAL_DATE,
                DateTimeFormatter.ofPattern("d MMM yyyy", units.locale()),
                DateTimeFormatter.ofPattern("d.M.yyyy", units.locale()));

        @Override
        public String toString(LocalDate day) {
            return day == null ? "" : shownAs.format(day);
        }

        @Override
        public LocalDate fromString(String typed) {
            for (DateTimeFormatter each : read) {
                try {
                    return LocalDate.parse(typed.strip(), each);
                } catch (DateTimeParseException another) {
                    continue;
                }
            }
            return model.wishProperty().get().readyBy();
        }
    }
}
