package piecewright.desktop.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import piecewright.text.MomentFormat;
import piecewright.text.WindowWords;

/** One invisible node per act, so that keyboard and screen reader find what is only painted. */
final class ActHandles {
    /** Least side of what is pointed at, pixels; see target size, minimum, of the guidelines for accessible content. */
    private static final double LEAST_TARGET = 24;

    private final PlanTimeline timeline;
    private final Pane pane = new Pane();
    private final List<Region> nodes = new ArrayList<>();

    ActHandles(PlanTimeline timeline) {
        this.timeline = timeline;
        pane.setPickOnBounds(false);
        pane.setMouseTransparent(true);
    }

    Region pane() {
        return pane;
    }

    void show(Optional<PieceChart> chart) {
        nodes.clear();
        chart.ifPresent(shown -> {
            MomentFormat moments =
                    new MomentFormat(shown.frame().zone(), timeline.units().locale());
            for (ActMark act : shown.acts()) nodes.add(node(act, moments));
        });
        pane.getChildren().setAll(nodes);
    }

    private Region node(ActMark act, MomentFormat moments) {
        Region node = new Region();
        // laid out by the marker it stands for, never by the pane, to which an empty region is nothing wide
        node.setManaged(false);
        node.setId("act-" + act.id());
        node.getStyleClass().add("act-handle");
        node.setAccessibleRole(AccessibleRole.BUTTON);
        node.setAccessibleText(WindowWords.say(
                "timeline.act-spoken",
                act.title(),
                moments.moment(act.at()),
                WindowWords.say("standing." + act.standing().name().toLowerCase(java.util.Locale.ROOT))));
        node.focusedProperty().addListener((focused, before, now) -> {
            if (now) timeline.selectedActProperty().set(act.id());
        });
        return node;
    }

    void place(PieceChart chart, TimeScale scale, Lanes lanes) {
        int[] rows = ActPainter.rows(chart, scale, lanes);
        for (int i = 0; i < nodes.size(); i++) {
            double x = scale.x(chart.acts().get(i).at());
            double side = Math.max(LEAST_TARGET, lanes.marker());
            nodes.get(i).resize(side, side);
            nodes.get(i).relocate(Math.round(x - side / 2), ActPainter.middleY(lanes, rows[i]) - side / 2);
        }
    }

    /** The act whose marker lies there; of several the one whose middle is nearest. */
    Optional<String> at(double x, double y) {
        Point2D there = new Point2D(x - pane.getLayoutX(), y);
        return nodes.stream()
                .filter(node -> node.getBoundsInParent().contains(there))
                .min(Comparator.comparingDouble(node -> middle(node).distance(there)))
                .map(node -> node.getId().substring("act-".length()));
    }

    private static Point2D middle(Region node) {
        Bounds bounds = node.getBoundsInParent();
        return new Point2D(bounds.getCenterX(), bounds.getCenterY());
    }

    /** Lets a screen reader speak the chosen act. */
    void focus(String id) {
        nodes.stream()
                .filter(node -> ("act-" + id).equals(node.getId()))
                .findFirst()
                .ifPresent(node -> timeline.setAccessibleText(node.getAccessibleText()));
    }
}
