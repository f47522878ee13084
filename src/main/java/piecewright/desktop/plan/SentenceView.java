package piecewright.desktop.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import javafx.application.Platform;
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
import piecewright.desktop.paint.Signs;
import piecewright.desktop.plan.Problem.Word;
import piecewright.desktop.shell.Refilled;
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
    private final Refilled amountShown = new Refilled(amount);
    private final DatePicker readyBy = new DatePicker();
    private final MenuButton style = new MenuButton();
    private final MenuButton lot = new MenuButton();
    private final MenuButton house = new MenuButton();
    private final TextField colour = new TextField();
    private final Refilled colourShown = new Refilled(colour);
    private final HBox chip = new HBox();
    private final MenuButton company = new MenuButton();

    SentenceView(WishViewModel model, DisplayUnits units) {
        this.model = model;
        this.units = units;
        pane.getStyleClass().add("sentence");
        word(Word.AMOUNT, amount, "wish-amount");
        word(Word.STYLE, style, "wish-style");
        word(Word.COLOUR, colour, "wish-colour");
        word(Word.READY_BY, readyBy, "wish-ready-by");
        word(Word.LOT, lot, "wish-lot");
        word(Word.HOUSE, house, "wish-house");
        word(Word.COMPANY, company, "wish-company");
        HBox coloured = led("about", colour);
        coloured.getChildren().add(chip);
        pane.getChildren()
                .addAll(
                        led("i-want", amount),
                        led("of", style),
                        coloured,
                        led("ready-by", readyBy),
                        led("from", lot),
                        led("in", house),
                        led("company", company));
        company.getParent().managedProperty().bind(company.visibleProperty());
        company.getParent().visibleProperty().bind(company.visibleProperty());
        amount.setOnAction(event -> {
            amountShown.taken();
            model.typeAmount(amount.getText());
        });
        amount.focusedProperty().addListener((focused, before, now) -> {
            if (!now && !amount.getText().equals(amountText(model.wishProperty().get()))) {
                model.typeAmount(amount.getText());
            }
        });
        colour.setOnAction(event -> {
            colourShown.taken();
            model.typeColour(colour.getText());
        });
        colour.focusedProperty().addListener((focused, before, now) -> {
            if (!now && !colour.getText().equals(colourText(model.wishProperty().get()))) {
                model.typeColour(colour.getText());
            }
        });
        readyBy.setConverter(new DayConverter());
        readyBy.valueProperty().addListener((value, before, now) -> {
            if (now != null) model.chooseReadyBy(now);
        });
        model.wishProperty().addListener((wish, before, now) -> show(now));
        model.typedProperty()
                .addListener((typed, before, now) -> show(model.wishProperty().get()));
        model.besidesProperty()
                .addListener((besides, before, now) -> show(model.wishProperty().get()));
        model.draftedProperty().addListener((drafted, before, now) -> chip());
        show(model.wishProperty().get());
    }

    FlowPane node() {
        return pane;
    }

    Optional<Control> word(Word word) {
        return Optional.ofNullable(words.get(word));
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
        company.getItems()
                .setAll(
                        item(WindowWords.say("wish.beside-others"), Wish.Company.BESIDE_OTHERS),
                        item(WindowWords.say("wish.alone"), Wish.Company.ALONE));
        shown = choices;
        show(model.wishProperty().get());
    }

    private MenuItem item(String text, Wish.Company chosen) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setOnAction(event -> change(wish -> wish.with(chosen)));
        return item;
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
        Map<Word, String> typed = model.typedProperty().get();
        if (!typed.containsKey(Word.AMOUNT)) amountShown.show(amountText(wish));
        amount.setPrefColumnCount(Math.max(4, amount.getText().length()));
        if (!typed.containsKey(Word.COLOUR)) colourShown.show(colourText(wish));
        colour.setPromptText(usualColour(wish));
        colour.setPrefColumnCount(Math.max(8, colour.getPromptText().length() / 2));
        if (!typed.containsKey(Word.READY_BY)) readyBy.setValue(wish.readyBy());
        company(wish);
        chip();
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

    /** What is said of the others: nothing where there are none and nobody asked to be alone. */
    private void company(Wish wish) {
        int others = model.besidesProperty().get().size();
        boolean alone = wish.company() == Wish.Company.ALONE;
        company.setVisible(alone || others > 0);
        company.setText(
                alone
                        ? WindowWords.say("wish.alone")
                        : others == 1
                                ? WindowWords.say("wish.beside-one")
                                : WindowWords.say("wish.beside-many", Integer.toString(others)));
    }

    /** A corn of the colour wished for, or of what the plan gives. */
    private void chip() {
        OptionalDouble wished = model.wishProperty().get().malt().colourEbc();
        OptionalDouble found = wished.isPresent()
                ? wished
                : model.draftedProperty()
                        .get()
                        .map(drafted -> OptionalDouble.of(
                                drafted.plan().outcome().finished().kiln().colourEbc()))
                        .orElse(OptionalDouble.empty());
        chip.getChildren().clear();
        found.ifPresent(ebc -> chip.getChildren().add(Signs.corn(ebc)));
    }

    private String colourText(Wish wish) {
        OptionalDouble wished = wish.malt().colourEbc();
        return wished.isPresent() ? new QuantityFormat(units).colour(wished.getAsDouble()) : "";
    }

    private String usualColour(Wish wish) {
        QuantityFormat quantities = new QuantityFormat(units);
        var usual = wish.style().finish().colour();
        return WindowWords.say(
                "wish.usual-colour", quantities.colour(usual.lowEbc()), quantities.colour(usual.highEbc()));
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
    void trouble(List<Problem> problems) {
        words.forEach((word, control) -> {
            Optional<Problem> of =
                    problems.stream().filter(problem -> problem.word() == word).findFirst();
            control.pseudoClassStateChanged(TROUBLED, of.isPresent());
            control.setAccessibleHelp(of.map(Problem::sentence).orElse(""));
        });
    }

    /** A day as people write it; what cannot be read changes nothing, is told, and stays as it was typed. */
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
            model.unreadableDay(typed);
            Platform.runLater(() -> readyBy.getEditor().setText(typed));
            return model.wishProperty().get().readyBy();
        }
    }
}
