package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.desktop.timeline.PlanTimeline;

/** A plan that is kept, told what happened, and planned anew, in a real window by keyboard alone. */
@Tag("window")
class BatchWindowTest {
    private static final Duration LATE = Duration.ofHours(4);

    @TempDir
    Path folder;

    /** When an act of the piece that is looked at is planned. */
    private static Instant act(Screen screen, String id) {
        return screen.node("timeline", PlanTimeline.class)
                .chartProperty()
                .get()
                .orElseThrow()
                .act(id)
                .orElseThrow()
                .at();
    }

    @Test
    void aKeptPlanIsToldOfALateSoakAndItsRestIsPlannedAnew() throws IOException {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            putTheDemoPieceAway(screen);
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.until(() -> screen.scene().lookup("#chance-words") != null);
            screen.until(() -> text(screen, "chance-words").contains("%"));
            screen.focus("keep");
            screen.press(KeyCode.SPACE);
            screen.until(() -> !text(screen, "batch-title").isEmpty());
            screen.tick(act(screen, "steep-1.soak").toString());
            tell(screen, "soaked");
            screen.until(() -> said(screen).contains("Soak"));
            screen.tick(act(screen, "steep-1.drain").plus(LATE).toString());
            tell(screen, "drained 6.8 kg");
            screen.until(() -> said(screen).contains("6.8"));
            screen.picture("batch-light");
            screen.focus("batch-ran-long");
            screen.press(KeyCode.SPACE);
            screen.until(() -> screen.scene().lookup("#batch-accept") != null);
            screen.picture("batch-late");
            screen.focus("batch-accept");
            screen.press(KeyCode.SPACE);
            screen.until(() -> !text(screen, "batch-calendar-note").isEmpty());
            screen.focus("batch-calendar");
            screen.press(KeyCode.SPACE);
            screen.until(() -> text(screen, "batch-calendar-note").contains(".ics"));
            assertTrue(text(screen, "batch-calendar-note").contains("new"));
            screen.focus("batch-one-calendar");
            screen.press(KeyCode.SPACE);
            screen.until(() -> text(screen, "batch-calendar-note").contains("all-pieces.ics"));
            String all = Files.readString(folder.resolve("ours/batches/all-pieces.ics"));
            assertTrue(all.contains("Soak 1") && all.contains("Take off the kiln"), all);
            screen.picture("batch-one-calendar");
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("batch-dark");
        }
    }

    /** The clock runs on by weeks here: the demo's piece would lie on its trays all the while. */
    private void putTheDemoPieceAway(Screen screen) throws IOException {
        Path batches = folder.resolve("ours/demo/batches");
        Path demo = batches.resolve("pale-malt.json");
        screen.until(() -> Files.exists(demo) && !text(screen, "batch-title").isEmpty());
        try (Stream<Path> files = Files.list(batches)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) Files.delete(file);
        }
        screen.until(() -> screen.scene().lookup("#piece-0") == null);
    }

    private static void tell(Screen screen, String line) {
        Screen.run(() -> {
            TextField field = (TextField) screen.scene().lookup("#batch-line");
            field.requestFocus();
            field.setText(line);
        });
        screen.press(KeyCode.ENTER);
    }

    private static String said(Screen screen) {
        StringBuilder all = new StringBuilder();
        for (Node node : screen.scene().getRoot().lookupAll("#batch-said .label")) {
            if (node instanceof Label label) all.append(label.getText());
        }
        return all.toString();
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
