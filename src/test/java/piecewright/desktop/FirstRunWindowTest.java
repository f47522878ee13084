package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.BatchAtHand;
import piecewright.desktop.timeline.PlanTimeline;
import piecewright.plan.Continuation;
import piecewright.plan.ModelParameters;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** The first run in a real window: a piece under way, removed by one key. */
@Tag("window")
class FirstRunWindowTest {
    @TempDir
    Path folder;

    @Test
    void itOpensOnADemoPieceUnderWayThatGoesInOneStep() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.until(() -> text(screen, "batch-title").contains("Pale malt"));
            screen.until(() -> !screen.node("timeline", PlanTimeline.class)
                    .chartProperty()
                    .get()
                    .orElseThrow()
                    .bands()
                    .moisture()
                    .low()
                    .points()
                    .isEmpty());
            screen.focus("batch-line");
            screen.picture("first-run");
            screen.focus("demo-remove");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#empty-demo") != null);
            assertTrue(Files.notExists(folder.resolve("ours").resolve("demo")));
            screen.picture("empty");
            screen.focus("demo-restore");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#piece-0") != null);
            assertTrue(Files.exists(folder.resolve("ours/demo/batches/pale-malt.json.journal.jsonl")));
            screen.focus("demo-remove");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#empty-demo") != null);
            screen.focus("empty-demo");
            screen.press(KeyCode.SPACE);
            screen.until(() -> text(screen, "batch-title").contains("Pale malt"));
            assertNotEquals(
                    "demo-remove",
                    Screen.on(
                            () -> String.valueOf(screen.scene().getFocusOwner().getId())),
                    "the next key must not take it away again");
        }
    }

    /** While the piece is still being laid out no button has the focus, so that a key pressed early removes nothing. */
    @Test
    void theFirstKeyRemovesNothing() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.press(KeyCode.SPACE);
            screen.until(() -> text(screen, "batch-title").contains("Pale malt"));
            assertTrue(Files.exists(folder.resolve("ours/demo/lots/two-row-barley.json")));
        }
    }

    /** Another program keeps a journal entry; the window is told by its own watch, not by a key. */
    @Test
    void whatTheTerminalWritesIsShown() throws Exception {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.until(() -> text(screen, "batch-title").contains("Pale malt"));
            int before = dots(screen);
            Path batch = folder.resolve("ours/demo/batches/pale-malt.json");
            Continuation continuation = new Continuation(ModelParameters.defaults());
            BatchAtHand.Recording recording = BatchAtHand.open(batch, StyleLibrary.builtIn(), continuation)
                    .recordLine("bed 19 C", DisplayUnits.metric(), Instant.parse("2027-03-01T08:50:00Z"));
            assertInstanceOf(BatchAtHand.Recording.Kept.class, recording);
            screen.until(() -> dots(screen) == before + 1);
        }
    }

    private static int dots(Screen screen) {
        return Screen.on(() -> screen.node("timeline", PlanTimeline.class)
                .chartProperty()
                .get()
                .map(chart -> chart.dots().size())
                .orElse(0));
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
