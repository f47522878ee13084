package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.app.CalendarManner;
import piecewright.app.Keeping;
import piecewright.app.PlanWish;
import piecewright.app.ReadWish;
import piecewright.app.Workspace;
import piecewright.journal.Report;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.store.BatchFile;
import piecewright.store.JournalFile;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** Papers of a piece, its end, and two ended pieces side by side, in a real window by keyboard alone. */
@Tag("window")
class FinishWindowTest {
    private static final Instant BEFORE = Instant.parse("2027-03-01T09:00:00Z");

    @TempDir
    Path folder;

    private Workspace workspace;
    private Instant off = BEFORE;

    /** A piece of that weight of which everything was done as planned, up to the kiln; nothing is weighed. */
    private Path dried(String name, double maltKg) throws Exception {
        PlanWish wish = new PlanWish(
                StyleLibrary.builtIn().style("pale"),
                folder.resolve("ours/lots/two-row-barley.json"),
                folder.resolve("ours/houses/cool-garage.json"),
                new Amount.FinishedMalt(maltKg),
                new When.ReadyBy(LocalDate.of(2027, 4, 17), LocalDate.of(2027, 3, 1)));
        ReadWish read = ReadWish.of(wish);
        Plan plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(read.request())).plan();
        UUID id = UUID.nameUUIDFromBytes(name.getBytes(StandardCharsets.UTF_8));
        Path file = workspace.newBatch(name);
        Keeping.open(
                        new Keeping.Targets(Optional.of(file), Optional.empty()),
                        read,
                        () -> id,
                        piecewright.store.StyleLibrary.builtIn())
                .keep(read, plan, CalendarManner.usual(DisplayUnits.metric()), BEFORE);
        List<Act> done =
                plan.acts().stream().filter(act -> act.kind() != ActKind.DEROOT).toList();
        JournalFile.append(
                JournalFile.beside(file),
                id,
                journal -> done.stream()
                        .map(act -> new JournalFile.Draft(
                                act.startsAt(), act.startsAt(), Optional.empty(), Report.Did.of(act.kind())))
                        .toList());
        off = plan.acts().get(plan.acts().size() - 1).endsAt().plus(Duration.ofHours(1));
        return file;
    }

    /** A workspace of somebody's own, its demo gone. */
    private void ownWorkspace() throws Exception {
        workspace = Workspace.open(folder.resolve("ours"));
        workspace.removeDemo();
        workspace.take(Path.of("demo-data/lots/two-row-barley.json"));
        Files.createDirectories(folder.resolve("ours/houses"));
        workspace.take(Path.of("demo-data/houses/cool-garage-2027-03.csv"));
        workspace.take(Path.of("demo-data/houses/cool-garage.json"));
    }

    @Test
    void papersAreWrittenAndPiecesAreClosedAndHeldAgainstEachOther() throws Exception {
        ownWorkspace();
        Path large = dried("large", 4);
        Path small = dried("small", 3);
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.tick(off.toString());
            screen.until(() -> screen.scene().lookup("#piece-1") != null);
            open(screen, 0);
            papers(screen, large);
            close(screen, large, "3.9 kg");
            screen.picture("finish-light");
            open(screen, 1);
            close(screen, small, "2.9 kg");
            screen.until(() -> labels(screen, "#going").contains("Closed: 2.900 kg"));
            compare(screen);
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("compare-dark");
        }
    }

    private static void open(Screen screen, int piece) {
        screen.focus("piece-" + piece);
        screen.press(KeyCode.SPACE);
        screen.until(() -> screen.scene().lookup("#batch-finish") != null
                && screen.scene().lookup("#batch-finish").isVisible());
    }

    private static void papers(Screen screen, Path batch) throws Exception {
        screen.focus("batch-papers");
        screen.press(KeyCode.SPACE);
        Path sheet = batch.resolveSibling("large.sheet.html");
        Path picture = batch.resolveSibling("large.chart.png");
        screen.focus("papers-sheet");
        screen.press(KeyCode.SPACE);
        screen.until(() -> screen.scene().lookup("#papers-file-0") != null);
        screen.focus("papers-chart-png");
        screen.press(KeyCode.SPACE);
        screen.until(() -> screen.scene().lookup("#papers-file-1") != null);
        assertEquals(
                picture.toString(),
                screen.node("papers-file-0", TextField.class).getText());
        assertTrue(Files.readString(sheet).contains("two-row barley"));
        assertEquals("PNG", new String(Files.readAllBytes(picture), 1, 3, StandardCharsets.US_ASCII));
        assertFalse(screen.scene().lookup("#papers-couch-png").isVisible(), "a pale batch has no hot couch");
        screen.picture("papers-light");
        Files.writeString(sheet, "somebody else's");
        screen.focus("papers-sheet");
        screen.press(KeyCode.SPACE);
        screen.until(() -> text(screen, "papers-folder-note").contains("not made here"));
        assertEquals("somebody else's", Files.readString(sheet));
    }

    private static void close(Screen screen, Path batch, String weight) throws Exception {
        if (screen.scene().lookup("#finish") == null) {
            screen.focus("batch-finish");
            screen.press(KeyCode.SPACE);
        }
        screen.until(() -> screen.scene().lookup("#finish-weight") != null);
        assertEquals("", screen.node("finish-weight", TextField.class).getText());
        type(screen, "finish-weight", "plenty");
        screen.until(() -> !text(screen, "finish-weight-note").isEmpty());
        assertEquals("plenty", screen.node("finish-weight", TextField.class).getText());
        type(screen, "finish-note", "turn oftener");
        type(screen, "finish-colour", "3 EBC");
        type(screen, "finish-weight", weight);
        screen.until(() -> labels(screen, "#finish-told").contains("a yield of"));
        assertTrue(labels(screen, "#finish-told").contains("turn oftener"));
        assertTrue(BatchFile.read(batch).finishedAt().isPresent());
    }

    private static void compare(Screen screen) {
        screen.go("learned");
        screen.focus("compare-first");
        screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.ENTER);
        screen.focus("compare-second");
        screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);
        screen.until(() -> labels(screen, "#compared").contains("Yield"));
        Screen.run(() -> {
            for (Node node : screen.scene().getRoot().lookupAll(".middle-scroll")) {
                if (node instanceof ScrollPane scroll) scroll.setVvalue(1);
            }
        });
        screen.picture("compare-light");
    }

    private static void type(Screen screen, String id, String text) {
        Screen.run(() -> {
            TextField field = (TextField) screen.scene().lookup("#" + id);
            field.requestFocus();
            field.setText(text);
        });
        screen.press(KeyCode.ENTER);
    }

    private static String labels(Screen screen, String within) {
        Node root = screen.scene().lookup(within);
        if (root == null) return "";
        StringBuilder all = new StringBuilder();
        for (Node node : root.lookupAll(".label")) if (node instanceof Label label) all.append(label.getText());
        return all.toString();
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
