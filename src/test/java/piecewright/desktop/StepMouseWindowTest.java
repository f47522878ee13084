package piecewright.desktop;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import piecewright.desktop.timeline.ActMark;
import piecewright.desktop.timeline.PlanTimeline;

/** Steps of the timeline are chosen by the mouse, wherever on their marker it is pressed. */
@Tag("window")
class StepMouseWindowTest {
    @TempDir
    Path folder;

    @Test
    void aClickChoosesTheStepWhoseMarkerIsNearest() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1280, 800)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            screen.until(
                    () -> !screen.node("chance-stop", Button.class).getParent().isVisible());
            PlanTimeline timeline = screen.node("timeline", PlanTimeline.class);
            List<String> steps = Screen.on(() -> timeline.chartProperty().get().orElseThrow().acts().stream()
                    .map(ActMark::id)
                    .toList());
            assertTrue(steps.size() > 8, steps.toString());
            for (String step : steps) {
                for (double aside : new double[] {-9, 0, 9}) {
                    Bounds there = bounds(timeline, step);
                    double x = there.getCenterX() + aside;
                    double y = there.getCenterY() + aside;
                    screen.click(timeline, x, y);
                    String chosen =
                            Screen.on(() -> timeline.selectedActProperty().get());
                    String nearest = steps.stream()
                            .min(Comparator.comparingDouble(id -> distance(bounds(timeline, id), x, y)))
                            .orElseThrow();
                    assertEquals(nearest, chosen, step + ", " + aside + " pixels aside");
                    if (aside == 0) assertEquals(step, chosen);
                }
            }
            screen.picture("step-clicked");
        }
    }

    @Test
    void everyMarkerIsLargeEnoughToBeHit() {
        try (Screen screen = Screen.open(folder.resolve("ours"), 1024, 700)) {
            screen.go("plan");
            screen.until(() -> screen.scene().lookup("#verdict-start") != null);
            PlanTimeline timeline = screen.node("timeline", PlanTimeline.class);
            // a plan made anew has its handles before they are laid out
            screen.until(() -> timeline.lookupAll(".act-handle").size() > 8
                    && timeline.lookupAll(".act-handle").stream()
                            .map(Region.class::cast)
                            .allMatch(handle -> handle.getWidth() >= 24 && handle.getHeight() >= 24));
        }
    }

    private static double distance(Bounds bounds, double x, double y) {
        return Math.hypot(bounds.getCenterX() - x, bounds.getCenterY() - y);
    }

    private static Bounds bounds(PlanTimeline timeline, String step) {
        return Screen.on(() -> {
            Node handle = timeline.lookupAll(".act-handle").stream()
                    .filter(node -> ("act-" + step).equals(node.getId()))
                    .findFirst()
                    .orElseThrow();
            return timeline.sceneToLocal(handle.localToScene(handle.getLayoutBounds()));
        });
    }
}
