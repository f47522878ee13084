package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Optional;
import java.util.UUID;
import javafx.scene.control.Label;
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
import piecewright.store.JournalFile;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;

/** A couch whose thermometer is read in a real window, by keyboard alone. */
@Tag("window")
class CouchWindowTest {
    private static final Instant BEFORE = Instant.parse("2027-03-01T09:00:00Z");

    @TempDir
    Path folder;

    /** A couched piece of which everything up to its packing was done as planned; when it was packed. */
    private Instant packed() throws Exception {
        Workspace workspace = Workspace.open(folder.resolve("ours"));
        workspace.removeDemo();
        PlanWish wish = new PlanWish(
                StyleLibrary.builtIn().style("munich"),
                Path.of("demo-data/lots/two-row-barley.json"),
                Path.of("demo-data/houses/cool-garage.json"),
                new Amount.FinishedMalt(4),
                new When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        ReadWish read = ReadWish.of(wish);
        Plan plan = ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(read.request())).plan();
        UUID id = UUID.fromString("00000000-0000-4000-8000-000000000009");
        Path file = workspace.newBatch("munich");
        Keeping.open(
                        new Keeping.Targets(Optional.of(file), Optional.empty()),
                        read,
                        () -> id,
                        piecewright.store.StyleLibrary.builtIn())
                .keep(read, plan, CalendarManner.usual(DisplayUnits.metric()), BEFORE);
        Instant packed = plan.acts().stream()
                .filter(act -> act.kind() == ActKind.PACK)
                .map(Act::startsAt)
                .findFirst()
                .orElseThrow();
        JournalFile.append(
                JournalFile.beside(file),
                id,
                journal -> plan.acts().stream()
                        .filter(act -> !act.startsAt().isAfter(packed))
                        .map(act -> new JournalFile.Draft(
                                act.startsAt(), act.startsAt(), Optional.empty(), Report.Did.of(act.kind())))
                        .toList());
        return packed;
    }

    @Test
    void aReadingIsTypedAndHeldAgainstTheForecast() throws Exception {
        Instant packed = packed();
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.tick(packed.plus(Duration.ofHours(9)).toString());
            screen.until(() -> text(screen, "batch-title").contains("Munich"));
            screen.focus("batch-other-look");
            screen.press(KeyCode.SPACE);
            screen.until(() -> text(screen, "couch-words").contains("Break it"));
            Screen.run(() -> {
                TextField field = (TextField) screen.scene().lookup("#couch-reading");
                field.requestFocus();
                field.setText("34 C");
            });
            screen.press(KeyCode.ENTER);
            screen.until(() -> text(screen, "couch-words").contains("Last read 34"));
            assertTrue(screen.node("couch-reading", TextField.class).getText().isEmpty());
            screen.picture("couch-light");
            screen.focus("looks-theme");
            screen.press(KeyCode.SPACE);
            screen.picture("couch-dark");
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
