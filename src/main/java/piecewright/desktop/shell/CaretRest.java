package piecewright.desktop.shell;

import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.DatePicker;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.skin.TextInputControlSkin;
import javafx.scene.input.InputEvent;
import javafx.util.Duration;

/**
 * Lets the caret stand still when nobody has touched the window for a while. As long as it blinks, the toolkit wakes
 * sixty times a second; with the next key the field makes it blink again by itself.
 */
public final class CaretRest {
    private static final Duration PATIENCE = Duration.seconds(10);

    private CaretRest() {}

    /** Follows what is done in a scene. */
    public static void in(Scene scene) {
        PauseTransition patience = new PauseTransition(PATIENCE);
        patience.setOnFinished(event -> still(scene.getFocusOwner()));
        scene.addEventFilter(InputEvent.ANY, event -> patience.playFromStart());
        scene.focusOwnerProperty().addListener(moved -> patience.playFromStart());
        patience.playFromStart();
    }

    private static void still(Node focused) {
        if (focused instanceof DatePicker day) still(day.getEditor());
        else if (focused instanceof TextInputControl field && field.getSkin() instanceof TextInputControlSkin<?> skin) {
            skin.setCaretAnimating(false);
        }
    }
}
