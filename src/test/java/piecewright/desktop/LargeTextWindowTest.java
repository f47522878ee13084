package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** No word of any screen is cut off, at the usual size of text and at twice that. */
@Tag("window")
class LargeTextWindowTest {
    private static final List<String> WAYS = List.of("plan", "colour", "grain", "house", "learned");

    @TempDir
    Path folder;

    @Test
    void noWordIsCutOffInASmallWindow() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1024, 700)) {
            assertEquals(List.of(), cutOff(screen, "small"));
        }
    }

    @Test
    void noWordIsCutOffAtTwiceTheSize() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.focus("looks-larger");
            screen.press(KeyCode.SPACE, KeyCode.SPACE, KeyCode.SPACE, KeyCode.SPACE);
            assertEquals(List.of(), cutOff(screen, "large"));
        }
    }

    private static List<String> cutOff(Screen screen, String size) {
        screen.until(() -> screen.scene().lookup("#piece-0") != null);
        List<String> cut = new ArrayList<>(cutOffOn(screen, size, "piece"));
        screen.focus("batch-papers");
        screen.press(KeyCode.SPACE);
        cut.addAll(cutOffOn(screen, size, "papers"));
        for (String way : WAYS) {
            screen.go(way);
            screen.until(() -> screen.scene().lookup("#" + shown(way)) != null);
            cut.addAll(cutOffOn(screen, size, way));
        }
        return cut;
    }

    private static String shown(String way) {
        return way.equals("plan") ? "verdict-start" : way + "-view";
    }

    private static List<String> cutOffOn(Screen screen, String size, String where) {
        screen.settle();
        screen.picture(size + "-" + where);
        List<String> cut = new ArrayList<>();
        Screen.run(() -> walk(screen.scene().getRoot(), where, cut));
        return cut;
    }

    /** What a label shows is a text of its own, which ends in dots where there was no room for all of it. */
    private static void walk(Node node, String where, List<String> cut) {
        if (!node.isVisible()) return;
        if (node instanceof Labeled labeled && labeled.getText() != null) {
            for (Node child : labeled.getChildrenUnmodifiable()) {
                if (child instanceof Text text && !text.getText().equals(labeled.getText())) {
                    cut.add(where + ": " + labeled.getText() + " as " + text.getText());
                }
            }
        }
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) walk(child, where, cut);
        }
    }
}
