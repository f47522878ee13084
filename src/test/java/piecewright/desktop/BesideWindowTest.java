package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.desktop.timeline.PieceChart;
import piecewright.desktop.timeline.PlanTimeline;
import piecewright.plan.Availability.Stretch;

/** A second piece planned beside one that is under way, in a colour that is typed, by keyboard alone. */
@Tag("window")
class BesideWindowTest {
    @TempDir
    Path folder;

    @Test
    void aSecondPieceIsPlannedInAColourBesideTheFirst() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> text(screen, "chance-words").contains("%"));
            screen.focus("keep");
            screen.press(KeyCode.SPACE);
            screen.until(() -> !text(screen, "batch-title").isEmpty());
            screen.go("plan");
            screen.focus("wish-colour");
            screen.press(KeyCode.DIGIT2, KeyCode.PERIOD, KeyCode.DIGIT8, KeyCode.SPACE);
            screen.press(KeyCode.E, KeyCode.B, KeyCode.C, KeyCode.ENTER);
            screen.until(() -> Math.abs(figure(text(screen, "verdict-colour")) - 2.8) < 0.15 * 2.8);
            screen.until(() ->
                    screen.node("wish-company", MenuButton.class).getText().contains("beside"));
            screen.until(() -> chart(screen).frame().besides().size() == 1);
            assertEquals(List.of(), meetings(chart(screen)));
            screen.until(() -> text(screen, "chance-words").contains("%"));
            screen.picture("plan-beside");
            screen.focus("wish-company");
            screen.press(KeyCode.SPACE, KeyCode.DOWN, KeyCode.DOWN, KeyCode.ENTER);
            screen.until(() ->
                    screen.node("wish-company", MenuButton.class).getText().contains("nothing else"));
            screen.until(() -> chart(screen).frame().besides().isEmpty());
            assertFalse(meetings(chart(screen), kept(screen)).isEmpty(), "alone, both batches want the same hours");
            screen.chord(KeyCode.CONTROL, KeyCode.Z);
            screen.until(() -> chart(screen).frame().besides().size() == 1);
        }
    }

    private static double figure(String colour) {
        return colour.isEmpty() ? 0 : Double.parseDouble(colour.replaceAll("[^0-9.]", ""));
    }

    private List<Stretch> first = List.of();

    private List<Stretch> kept(Screen screen) {
        return first;
    }

    /** Acts of the piece that fall into the hours somebody works on another. */
    private List<String> meetings(PieceChart chart) {
        first = chart.frame().besides().get(0).hands();
        return meetings(chart, first);
    }

    private static List<String> meetings(PieceChart chart, List<Stretch> hands) {
        return chart.acts().stream()
                .filter(act -> hands.stream().anyMatch(taken -> within(taken, act.at())))
                .map(act -> act.id())
                .toList();
    }

    private static boolean within(Stretch taken, Instant at) {
        return !at.isBefore(taken.from()) && at.isBefore(taken.until());
    }

    private static PieceChart chart(Screen screen) {
        for (Node node : screen.scene().getRoot().lookupAll("#timeline")) {
            if (node instanceof PlanTimeline timeline)
                return timeline.chartProperty().get().orElseThrow();
        }
        throw new AssertionError("no timeline is shown");
    }

    @Test
    void whatIsTypedWrongStaysAndIsToldUnderItsWord() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.focus("wish-colour");
            screen.press(KeyCode.R, KeyCode.E, KeyCode.D, KeyCode.ENTER);
            screen.until(() -> !text(screen, "problem-colour").isEmpty());
            assertEquals("red", screen.node("wish-colour", TextField.class).getText());
            screen.focus("wish-ready-by");
            screen.press(KeyCode.S, KeyCode.O, KeyCode.O, KeyCode.N, KeyCode.ENTER);
            screen.until(() -> !text(screen, "problem-ready_by").isEmpty());
            screen.picture("plan-typed-wrong");
            assertTrue(text(screen, "problem-ready_by").contains("no day"), text(screen, "problem-ready_by"));
        }
    }

    private static String text(Screen screen, String id) {
        return screen.scene().lookup("#" + id) instanceof Label label ? label.getText() : "";
    }
}
