package piecewright.desktop.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.Popup;
import piecewright.text.WindowWords;

/** The keys that work everywhere in the window: one table, obeyed here, told by F1 and by tooltips. */
public final class Shortcuts {
    private static final KeyCode[] DIGITS = {
        KeyCode.DIGIT1, KeyCode.DIGIT2, KeyCode.DIGIT3, KeyCode.DIGIT4, KeyCode.DIGIT5, KeyCode.DIGIT6
    };
    private static final KeyCombination BACK = new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination AGAIN = new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination AGAIN_TOO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    private static final KeyCombination NEW = new KeyCodeCombination(KeyCode.N);
    private static final KeyCombination LINE = new KeyCodeCombination(KeyCode.L);
    private static final KeyCombination HELP = new KeyCodeCombination(KeyCode.F1);

    private final List<Shortcut> all = new ArrayList<>();
    private boolean taken;
    private Optional<Popup> told = Optional.empty();

    /** What keys can ask of the window. */
    public interface Wishes {
        void go(Rail.Place place);

        /** A new plan, the caret in its sentence. */
        void plan();

        /** The batch that is looked at, the caret where a line is typed. */
        void write();
    }

    /**
     * @param kept whether what has the focus in a scene keeps these keys for itself
     * @param words key of what it does; empty text where another row tells it
     */
    private record Shortcut(KeyCombination keys, Predicate<Scene> kept, String words, Runnable action) {}

    public Shortcuts(Wishes wishes, UndoHistory history) {
        add(NEW, Shortcuts::typedInto, "keys.new", wishes::plan);
        add(LINE, Shortcuts::typedInto, "keys.line", wishes::write);
        for (Rail.Place place : Rail.Place.values()) {
            add(keys(place), scene -> false, "keys.go." + Rail.key(place), () -> wishes.go(place));
        }
        add(BACK, scene -> ownLetters(scene, true), "keys.undo", history::undo);
        add(AGAIN, scene -> ownLetters(scene, false), "keys.redo", history::redo);
        add(AGAIN_TOO, scene -> ownLetters(scene, false), "", history::redo);
    }

    private void add(KeyCombination keys, Predicate<Scene> kept, String words, Runnable action) {
        all.add(new Shortcut(keys, kept, words, action));
    }

    private static KeyCombination keys(Rail.Place place) {
        return new KeyCodeCombination(DIGITS[place.ordinal()], KeyCombination.SHORTCUT_DOWN);
    }

    /** The keys that lead to a screen, as a person reads them. */
    static String spoken(Rail.Place place) {
        return keys(place).getDisplayText();
    }

    /** Listens on a scene before its fields do. */
    public void on(Scene scene) {
        add(HELP, shown -> false, "keys.help", () -> tell(scene));
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            Optional<Shortcut> meant = all.stream()
                    .filter(key -> key.keys().match(event) && !key.kept().test(scene))
                    .findFirst();
            taken = meant.isPresent();
            meant.ifPresent(key -> {
                event.consume();
                key.action().run();
            });
        });
        // the letter of a key that was taken must not be typed where the caret now is
        scene.addEventFilter(KeyEvent.KEY_TYPED, event -> {
            if (taken) event.consume();
        });
    }

    /** A field that holds what is typed undoes its letters; an empty one has nothing of its own to say. */
    private static boolean ownLetters(Scene scene, boolean back) {
        return scene.getFocusOwner() instanceof TextInputControl field
                && !field.getText().isEmpty()
                && (back ? field.isUndoable() : field.isRedoable());
    }

    private static boolean typedInto(Scene scene) {
        return scene.getFocusOwner() instanceof TextInputControl
                || scene.getFocusOwner() instanceof ComboBoxBase<?> chosen
                        && (chosen.isEditable() || chosen.isShowing());
    }

    /** Shows all keys, or hides them again. */
    private void tell(Scene scene) {
        if (told.filter(Popup::isShowing).isPresent()) {
            told.ifPresent(Popup::hide);
            return;
        }
        Popup popup = new Popup();
        popup.setAutoHide(true);
        popup.setHideOnEscape(true);
        popup.getContent().add(list(scene));
        popup.show(scene.getWindow());
        popup.centerOnScreen();
        told = Optional.of(popup);
    }

    private Node list(Scene scene) {
        GridPane rows = new GridPane();
        rows.getStyleClass().add("keys-rows");
        for (Shortcut shortcut : all) {
            if (shortcut.words().isEmpty()) continue;
            Label keys = new Label(shortcut.keys().getDisplayText());
            keys.getStyleClass().add("keys-key");
            rows.addRow(rows.getRowCount(), keys, new Label(WindowWords.say(shortcut.words())));
        }
        Label title = new Label(WindowWords.say("keys.title"));
        title.getStyleClass().add("lead");
        VBox box = new VBox(10, title, rows, new Label(WindowWords.say("keys.timeline")));
        box.setId("keys");
        box.getStyleClass().addAll("keys", "shell");
        box.getStylesheets().setAll(scene.getStylesheets());
        box.setStyle(scene.getRoot().getStyle());
        return box;
    }
}
