package piecewright.desktop.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import piecewright.text.MomentFormat;
import piecewright.text.WindowWords;

/** One invisible node per act, so that keyboard and screen reader find what is only painted. */
final class ActHandles {
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
            nodes.get(i).resize(lanes.marker(), lanes.marker());
            nodes.get(i)
                    .relocate(
                            Math.round(x - lanes.marker() / 2),
                            ActPainter.middleY(lanes, rows[i]) - lanes.marker() / 2);
        }
    }

    /** The act whose marker lies there. */
    Optional<String> at(double x, double y) {
        for (int i = nodes.size() - 1; i >= 0; i--) {
            if (nodes.get(i).getBoundsInParent().contains(x - pane.getLayoutX(), y)) {
                return Optional.of(nodes.get(i).getId().substring("act-".length()));
            }
        }
        return Optional.empty();
    }

    /** Lets a screen reader speak the chosen act. */
    void focus(String id) {
        nodes.stream()
                .filter(node -> ("act-" + id).equals(node.getId()))
                .findFirst()
                .ifPresent(node -> timeline.setAccessibleText(node.getAccessibleText()));
    }
}
