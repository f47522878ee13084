package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The sentence, its plan and its acts in a real window, by keyboard alone. */
@Tag("window")
class WishWindowTest {
    @TempDir
    Path folder;

    @Test
    void aSentenceIsTypedAndItsActsAreSteppedThrough() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.focus("timeline");
            String first = screen.node("act-title", Label.class).getText();
            screen.press(KeyCode.RIGHT, KeyCode.RIGHT);
            assertTrue(!first.equals(screen.node("act-title", Label.class).getText()), first);
            screen.until(() -> screen.scene().lookup("#chance-words") != null);
            screen.until(() -> text(screen, "chance-words").contains("%"));
            screen.picture("plan-light");

            screen.focus("wish-amount");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT2, KeyCode.SPACE, KeyCode.K, KeyCode.G, KeyCode.ENTER);
            screen.press(KeyCode.TAB);
            assertEquals("2 kg", screen.node("wish-amount", TextField.class).getText());
            screen.until(() -> text(screen, "verdict-grain").contains("2.5"));
            screen.chord(KeyCode.CONTROL, KeyCode.Z);
            assertEquals("4 kg", screen.node("wish-amount", TextField.class).getText());

            screen.focus("wish-amount");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT9, KeyCode.DIGIT0, KeyCode.ENTER);
            screen.until(() -> screen.scene().lookup("#remedy") != null);
            screen.picture("plan-trouble");
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            // the demo's batch may just have been laid: then what helps beside it is sought anew before it is pressed
            while ("90 kg".equals(screen.node("wish-amount", TextField.class).getText())) {
                screen.focus("remedy");
                screen.press(KeyCode.SPACE);
            }
            screen.until(() -> screen.scene().lookup("#remedy") == null);
            screen.until(() -> {
                Node verdict = screen.scene().lookup("#verdict");
                return verdict != null && verdict.getOpacity() == 1;
            });
            screen.picture("plan-dark");
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }

    @Test
    void largeTextOnASmallWindowKeepsEverythingWithinReach() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1024, 700)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.picture("plan-small");
            screen.focus("looks-larger");
            screen.press(KeyCode.SPACE, KeyCode.SPACE);
            screen.picture("plan-large-text");
        }
    }
}
