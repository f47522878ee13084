package piecewright.desktop;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Hours painted on a week in a real window, by keyboard alone. */
@Tag("window")
class HouseWindowTest {
    @TempDir
    Path folder;

    @Test
    void hoursArePaintedKeptAndTakenBack() {
        Path ours = folder.resolve("ours");
        Path house = ours.resolve("demo").resolve("houses").resolve("cool-garage.json");
        try (Screen screen = Screen.open(ours, 1280, 800)) {
            screen.focus("way-house");
            screen.press(KeyCode.SPACE);
            screen.focus("week-grid");
            screen.press(KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN, KeyCode.DOWN);
            screen.chord(KeyCode.SHIFT, KeyCode.DOWN);
            screen.press(KeyCode.DIGIT1);
            screen.until(() -> read(house).contains("08:00-09:00"));
            screen.picture("house-light");
            screen.chord(KeyCode.CONTROL, KeyCode.Z);
            screen.until(() -> !read(house).contains("08:00-09:00"));
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("house-dark");
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failed) {
            throw new UncheckedIOException(failed);
        }
    }
}
