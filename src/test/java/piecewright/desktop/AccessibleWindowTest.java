package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a screen reader is told, on every screen; no reader itself is driven. */
@Tag("window")
class AccessibleWindowTest {
    private static final List<String> WAYS = List.of("plan", "colour", "grain", "house", "learned");

    @TempDir
    Path folder;

    @Test
    void everythingThatTakesTheKeyboardHasARoleAndSaysWhatItIs() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.until(() -> screen.scene().lookup("#piece-0") != null);
            List<String> silent = new ArrayList<>(silent(screen, "piece"));
            screen.focus("batch-papers");
            screen.press(KeyCode.SPACE);
            silent.addAll(silent(screen, "papers"));
            for (String way : WAYS) {
                screen.go(way);
                screen.until(() -> screen.scene().lookup("#" + shown(way)) != null);
                silent.addAll(silent(screen, way));
            }
            assertEquals(List.of(), silent);
        }
    }

    private static String shown(String way) {
        return way.equals("plan") ? "verdict-start" : way + "-view";
    }

    private static List<String> silent(Screen screen, String where) {
        screen.settle();
        List<String> silent = new ArrayList<>();
        Screen.run(() -> walk(screen.scene().getRoot(), where, silent));
        return silent;
    }

    private static void walk(Node node, String where, List<String> silent) {
        if (!node.isVisible()) return;
        boolean scrolls = node instanceof ScrollPane || node instanceof ScrollBar;
        if (node.isFocusTraversable() && !scrolls) {
            boolean role = node.getAccessibleRole() != null && node.getAccessibleRole() != AccessibleRole.NODE;
            if (!role || spoken(node).isBlank()) {
                silent.add(where + ": " + node.getClass().getSimpleName() + " #" + node.getId());
            }
        }
        if (node instanceof ComboBoxBase) return;
        if (node instanceof Parent parent) {
            for (Node child : parent.getChildrenUnmodifiable()) walk(child, where, silent);
        }
    }

    private static String spoken(Node node) {
        if (node.getAccessibleText() != null) return node.getAccessibleText();
        return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    /** Rail first, then the sentence word by word, its buttons, the piece along time, the sheet. */
    @Test
    void tabGoesThroughThePlannerInReadingOrder() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.focus("wish-amount");
            List<String> order = new ArrayList<>();
            for (int i = 0; i < 40 && !order.contains("timeline"); i++) {
                String id = Screen.on(
                        () -> String.valueOf(screen.scene().getFocusOwner().getId()));
                order.add(id);
                screen.press(KeyCode.TAB);
            }
            List<String> wanted = List.of(
                    "wish-amount",
                    "wish-style",
                    "wish-colour",
                    "wish-ready-by",
                    "wish-lot",
                    "wish-house",
                    "wish-company",
                    "checks",
                    "timeline");
            List<String> met = order.stream().filter(wanted::contains).toList();
            assertEquals(wanted, met, order.toString());
            assertTrue(order.size() < 20, order.toString());
        }
    }
}
