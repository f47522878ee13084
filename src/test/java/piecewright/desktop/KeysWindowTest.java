package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The keys that work everywhere, and how the window was left. */
@Tag("window")
class KeysWindowTest {
    @TempDir
    Path folder;

    @Test
    void keysLeadEverywhereAndLettersStayLettersWhereSomebodyTypes() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.until(() -> screen.scene().lookup("#batch-line") != null);
            screen.chord(KeyCode.CONTROL, KeyCode.DIGIT5);
            assertTrue(screen.node("way-house", ToggleButton.class).isSelected());
            screen.focus("way-colour");
            screen.press(KeyCode.N);
            assertEquals("wish-amount", focused(screen));
            assertEquals("4 kg", screen.node("wish-amount", TextField.class).getText(), "the letter is not typed");
            screen.press(KeyCode.N);
            assertTrue(screen.node("wish-amount", TextField.class).getText().contains("n"), "now it is");
            screen.focus("way-plan");
            screen.press(KeyCode.L);
            assertEquals("batch-line", focused(screen));
            assertEquals("", screen.node("batch-line", TextField.class).getText());
            screen.focus("way-plan");
            screen.press(KeyCode.F1);
            assertTrue(told());
            screen.press(KeyCode.ESCAPE);
            screen.settle();
            assertFalse(told());
        }
    }

    private static String focused(Screen screen) {
        return Screen.on(() -> String.valueOf(screen.scene().getFocusOwner().getId()));
    }

    private static boolean told() {
        return Screen.on(() -> Window.getWindows().stream()
                .anyMatch(window -> window.getScene().lookup("#keys") != null && window.isShowing()));
    }

    @Test
    void theWindowOpensAsItWasLeft() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            Screen.run(() -> {
                screen.stage().setX(60);
                screen.stage().setY(40);
                screen.stage().setWidth(1010);
                screen.stage().setHeight(690);
            });
            screen.settle();
        }
        try (Screen screen = Screen.again(folder.resolve("ours"))) {
            assertEquals(1010, screen.stage().getWidth());
            assertEquals(690, screen.stage().getHeight());
            assertEquals(60, screen.stage().getX());
        }
    }

    @Test
    void aPlaceNoScreenShowsIsNotKept() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            Screen.run(() -> screen.stage().setX(5000));
            screen.settle();
        }
        try (Screen screen = Screen.again(folder.resolve("ours"))) {
            assertTrue(screen.stage().getX() < 1600, "as " + screen.stage().getX());
        }
    }
}
