package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The colour map in a real window, by keyboard alone. */
@Tag("window")
class ColourWindowTest {
    @TempDir
    Path folder;

    @Test
    void aColourIsTypedAndTheCureIsMovedByArrows() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.focus("way-colour");
            screen.press(KeyCode.SPACE);
            screen.until(() -> verdict(screen).contains("Cure"));
            screen.focus("colour-sought");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT3, KeyCode.SPACE, KeyCode.E, KeyCode.B, KeyCode.C, KeyCode.ENTER);
            assertTrue(verdict(screen).contains("about 3 EBC"), verdict(screen));
            screen.focus("colour-map");
            screen.picture("colour-light");
            screen.chord(KeyCode.SHIFT, KeyCode.RIGHT);
            assertTrue(verdict(screen).contains("about 3 EBC"), verdict(screen));
            String before = verdict(screen);
            screen.press(KeyCode.UP, KeyCode.UP);
            assertNotEquals(before, verdict(screen));
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("colour-dark");
            screen.focus("beer-share");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT1, KeyCode.DIGIT0, KeyCode.DIGIT0, KeyCode.SPACE, KeyCode.DIGIT5);
            assertTrue(!text(screen, "beer-note").isEmpty());
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT9, KeyCode.DIGIT0);
            screen.focus("beer-take");
            screen.press(KeyCode.SPACE);
            String malt = text(screen, "beer-malt").replaceAll(".*about ", "").replaceAll("\\.$", "");
            screen.until(() ->
                    screen.node("colour-sought", TextField.class).getText().equals(malt));
            screen.focus("colour-style");
            screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
            screen.until(() -> verdict(screen).contains("Last roast"));
            screen.until(() -> text(screen, "colour-warning").contains("at most"));
            screen.focus("colour-sought");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT6, KeyCode.DIGIT0, KeyCode.SPACE, KeyCode.E, KeyCode.B, KeyCode.C);
            screen.press(KeyCode.ENTER);
            screen.until(() -> verdict(screen).contains("Last roast"));
            Screen.run(() -> screen.window().take(Path.of("demo-data/houses/terrace-kitchen.json")));
            screen.until(() -> screen.node("colour-house", MenuButton.class).getItems().stream()
                    .anyMatch(item -> item.getText().contains("terrace")));
            screen.focus("colour-house");
            screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
            screen.until(() ->
                    screen.node("colour-house", MenuButton.class).getText().contains("terrace"));
            screen.until(() -> text(screen, "colour-warning").isEmpty());
            screen.until(() -> verdict(screen).contains("Last roast"));
            screen.focus("colour-map");
            String roast = verdict(screen);
            screen.press(KeyCode.RIGHT);
            assertNotEquals(roast, verdict(screen));
            screen.picture("colour-roast");
            String sought = screen.node("colour-sought", TextField.class).getText();
            screen.focus("colour-plan");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#wish-colour") instanceof TextField colour
                    && colour.getText().equals(sought));
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }

    private static String verdict(Screen screen) {
        return screen.scene().lookup("#colour-verdict") instanceof Label label ? label.getText() : "";
    }
}
