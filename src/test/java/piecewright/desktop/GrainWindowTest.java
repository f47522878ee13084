package piecewright.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A lot's test sheet in a real window, by keyboard alone. */
@Tag("window")
class GrainWindowTest {
    @TempDir
    Path folder;

    @Test
    void cornsAreCountedAndTheGrainForMaltIsWorkedOut() {
        Path ours = folder.resolve("ours");
        try (Screen screen = Screen.open(ours, 1280, 800)) {
            screen.focus("way-grain");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#dish-1") != null);
            screen.focus("dish-1");
            screen.press(KeyCode.LEFT);
            Path lot = ours.resolve("demo").resolve("lots").resolve("two-row-barley.json");
            screen.until(() -> read(lot).contains("\"by72Hours\" : 97"));
            screen.until(() -> text(screen, "grain-verdict-words").equals("Malt it."));
            String four = text(screen, "grain-carry");
            screen.focus("grain-malt");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT5, KeyCode.ENTER);
            screen.until(() -> !four.equals(text(screen, "grain-carry")));
            screen.picture("grain-light");
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("grain-dark");
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
