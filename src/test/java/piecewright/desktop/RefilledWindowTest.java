package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.desktop.shell.Refilled;

/** What somebody is typing is not replaced by an answer that comes meanwhile. */
@Tag("window")
class RefilledWindowTest {
    @TempDir
    Path folder;

    @Test
    void anAnswerNeitherReplacesWhatIsTypedNorDropsWhatIsSelected() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.focus("wish-amount");
            TextField amount = screen.node("wish-amount", TextField.class);
            Refilled shown = Screen.on(() -> new Refilled(amount));
            Screen.run(() -> shown.show("4 kg"));
            screen.chord(KeyCode.CONTROL, KeyCode.A);
            Screen.run(() -> shown.show("4 kg"));
            assertEquals("4 kg", Screen.on(amount::getSelectedText));
            screen.press(KeyCode.DIGIT9);
            Screen.run(() -> shown.show("5 kg"));
            screen.press(KeyCode.DIGIT0);
            assertEquals("90", Screen.on(amount::getText));
            Screen.run(() -> {
                shown.taken();
                shown.show("90 kg");
            });
            assertEquals("90 kg", Screen.on(amount::getText));
        }
    }
}
