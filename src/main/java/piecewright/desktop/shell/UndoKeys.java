package piecewright.desktop.shell;

import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/** Ctrl+Z takes back what was done last, Ctrl+Y or Ctrl+Shift+Z does it again; while typing they are the field's. */
public final class UndoKeys {
    private static final KeyCombination BACK = new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination AGAIN = new KeyCodeCombination(KeyCode.Y, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination AGAIN_TOO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

    private final UndoHistory history;

    private UndoKeys(UndoHistory history) {
        this.history = history;
    }

    public static UndoKeys of(UndoHistory history) {
        return new UndoKeys(history);
    }

    /** Listens on a scene before its fields do. */
    public void on(Scene scene) {
        scene.addEventFilter(KeyEvent.KEY_PRESSED, event -> {
            boolean back = BACK.match(event);
            if (!back && !AGAIN.match(event) && !AGAIN_TOO.match(event)) return;
            if (scene.getFocusOwner() instanceof TextInputControl field && typing(field, back)) return;
            event.consume();
            if (back) history.undo();
            else history.redo();
        });
    }

    /** A field that holds what is typed undoes its letters; an empty one has nothing of its own to say. */
    private static boolean typing(TextInputControl field, boolean back) {
        return !field.getText().isEmpty() && (back ? field.isUndoable() : field.isRedoable());
    }
}
