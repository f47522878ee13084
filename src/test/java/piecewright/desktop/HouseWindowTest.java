package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
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

    @Test
    void somebodyMovesInAndNightsAreTyped() {
        Path ours = folder.resolve("ours");
        Path house = ours.resolve("demo").resolve("houses").resolve("cool-garage.json");
        try (Screen screen = Screen.open(ours, 1280, 800)) {
            screen.go("house");
            screen.focus("house-add-person");
            screen.press(KeyCode.SPACE);
            screen.until(() -> read(house).contains("somebody"));
            screen.until(() ->
                    screen.node("house-person", MenuButton.class).getText().equals("somebody"));
            screen.focus("house-night-most");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT2, KeyCode.ENTER);
            screen.until(() -> read(house).contains("nightActs"));
            screen.focus("house-night-from");
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            screen.press(KeyCode.DIGIT9, KeyCode.DIGIT9, KeyCode.ENTER);
            screen.until(() -> screen.scene().lookup("#house-night-from-note") instanceof Label note
                    && note.getText().contains("23:30"));
            assertEquals("99", screen.node("house-night-from", TextField.class).getText());
            screen.picture("house-people");
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
