package piecewright.desktop.shell;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import piecewright.desktop.paint.Signs;
import piecewright.text.WindowWords;

/** The left zone: what is on the go, and the ways to everything else. */
public final class Rail {
    private final VBox root = new VBox();
    private final ScrollPane whole = new ScrollPane(root);
    private final VBox going = new VBox();
    private final ScrollPane goingScroll = new ScrollPane(going);
    private final HBox demo = new HBox(8);
    private final HBox demoGone = new HBox(8);
    private final Label note = new Label();
    private final Map<Place, ToggleButton> ways = new EnumMap<>(Place.class);

    /** The screens there are. */
    public enum Place {
        PLAN,
        BATCH,
        COLOUR,
        GRAIN,
        HOUSE,
        LEARNED
    }

    /** What can be asked of the window from here. */
    public interface Wishes {
        void go(Place place);

        void removeDemo();

        /** Puts back what {@link #removeDemo} took away. */
        void restoreDemo();

        /** Takes back what was done last on any screen. */
        void undo();

        /** Does it again. */
        void redo();

        void otherTheme();

        void otherUnits();

        /** One step larger for 1, smaller for −1. */
        void textStep(int step);
    }

    public Rail(Wishes wishes, UndoHistory history) {
        Label name = new Label(WindowWords.say("title"));
        name.getStyleClass().add("brand");
        HBox brand = new HBox(10, Signs.mark(), name);
        brand.getStyleClass().add("brand-line");
        goingScroll.setFitToWidth(true);
        goingScroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        VBox.setVgrow(goingScroll, Priority.ALWAYS);
        note.setWrapText(true);
        note.setId("rail-note");
        note.getStyleClass().add("rail-note");
        note.setVisible(false);
        note.managedProperty().bind(note.visibleProperty());
        demo(wishes);
        root.getChildren().addAll(brand, goingScroll, note, demo, demoGone, ways(wishes), looks(wishes, history));
        root.getStyleClass().add("rail");
        root.setId("rail");
        goingScroll.getStyleClass().add("going-scroll");
        whole.setFitToWidth(true);
        whole.setFitToHeight(true);
        whole.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        whole.getStyleClass().add("rail-scroll");
        whole.setFocusTraversable(false);
    }

    public Node node() {
        return whole;
    }

    /** Where what is on the go is shown. */
    public VBox going() {
        return going;
    }

    /** Follows whether there is a demo to put back. */
    public void demoIsGone(ObservableBooleanValue gone) {
        demoGone.visibleProperty().bind(gone);
        demoGone.managedProperty().bind(gone);
    }

    /** Follows whether there is a demo to remove. */
    public void demoIs(ObservableBooleanValue there) {
        demo.visibleProperty().bind(there);
        demo.managedProperty().bind(there);
    }

    /** Tells something that went wrong, or nothing. */
    public void tell(String sentence) {
        note.setText(sentence);
        note.setVisible(!sentence.isEmpty());
    }

    public void mark(Place place) {
        ways.forEach((each, button) -> button.setSelected(each == place));
    }

    private void demo(Wishes wishes) {
        strip(demo, "demo.strip", button("demo.remove", "demo-remove", wishes::removeDemo));
        strip(demoGone, "demo.gone", button("demo.restore", "demo-restore", wishes::restoreDemo));
    }

    private static void strip(HBox strip, String key, Node button) {
        Label word = new Label(WindowWords.say(key));
        word.setWrapText(true);
        word.setMinHeight(Region.USE_PREF_SIZE);
        strip.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(word, Priority.ALWAYS);
        strip.getChildren().addAll(word, button);
        strip.getStyleClass().add("demo-strip");
    }

    private Node ways(Wishes wishes) {
        FlowPane buttons = new FlowPane(6, 6);
        ToggleGroup group = new ToggleGroup();
        for (Place place : Place.values()) {
            if (place == Place.BATCH) continue;
            ToggleButton way = new ToggleButton(WindowWords.say("way." + key(place)));
            way.setId("way-" + key(place));
            way.setTooltip(new Tooltip(
                    WindowWords.say("keys.way", WindowWords.say("keys.go." + key(place)), Shortcuts.spoken(place))));
            way.setToggleGroup(group);
            way.setOnAction(event -> {
                way.setSelected(true);
                wishes.go(place);
            });
            ways.put(place, way);
            buttons.getChildren().add(way);
        }
        return buttons;
    }

    static String key(Place place) {
        return place.name().toLowerCase(Locale.ROOT);
    }

    private static Node looks(Wishes wishes, UndoHistory history) {
        FlowPane buttons = new FlowPane();
        buttons.getStyleClass().add("looks");
        buttons.getChildren()
                .addAll(
                        told(button("looks.undo", "looks-undo", wishes::undo), "undo.would", history.undoProperty()),
                        told(button("looks.redo", "looks-redo", wishes::redo), "redo.would", history.redoProperty()),
                        button("looks.theme", "looks-theme", wishes::otherTheme),
                        button("looks.units", "looks-units", wishes::otherUnits),
                        button("looks.smaller", "looks-smaller", () -> wishes.textStep(-1)),
                        button("looks.larger", "looks-larger", () -> wishes.textStep(1)));
        return buttons;
    }

    /** The button says what it would take back or do again. */
    private static Button told(Button button, String key, ReadOnlyStringProperty what) {
        Tooltip tip = new Tooltip();
        tip.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> what.get().isEmpty() ? WindowWords.say(key + ".none") : WindowWords.say(key, what.get()),
                        what));
        button.setTooltip(tip);
        button.accessibleTextProperty().bind(tip.textProperty());
        button.disableProperty().bind(what.isEmpty());
        return button;
    }

    private static Button button(String words, String id, Consumer<Button> action) {
        Button button = new Button(WindowWords.say(words));
        button.setId(id);
        button.setAccessibleText(WindowWords.say(words + ".spoken"));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> action.accept(button));
        return button;
    }

    private static Button button(String words, String id, Runnable action) {
        return button(words, id, pressed -> action.run());
    }
}
