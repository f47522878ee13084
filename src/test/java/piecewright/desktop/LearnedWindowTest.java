package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.VBox;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo piece is learned from in a real window, by keyboard alone. */
@Tag("window")
class LearnedWindowTest {
    @TempDir
    Path folder;

    @Test
    void aPieceIsLearnedFromAndItsLotIsKnownBetter() {
        Path ours = folder.resolve("ours");
        try (Screen screen = Screen.open(ours, 1280, 800)) {
            screen.until(() -> screen.scene().lookup("#piece-0") != null);
            screen.go("learned");
            screen.until(() -> screen.scene().lookup("#learned-bar-1") != null);
            screen.focus("learned-learn-0");
            screen.press(KeyCode.SPACE);
            screen.until(() -> !((VBox) screen.scene().lookup("#learned-lessons"))
                    .getChildren()
                    .isEmpty());
            screen.until(() -> text(screen, "learned-from").contains("one batch"));
            assertTrue(Files.exists(ours.resolve("demo/lots/two-row-barley.learned.json")));
            screen.picture("learned-light");
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("learned-dark");
            screen.focus("compare-first");
            screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
            screen.focus("compare-second");
            screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
            screen.until(() -> text(screen, "learned-note").contains("not weighed"));
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
