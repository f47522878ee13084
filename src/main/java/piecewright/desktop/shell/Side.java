package piecewright.desktop.shell;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** What lies beside a screen: its parts one below the other, or side by side where it lies below the screen. */
public final class Side extends Region {
    private static final double SIDE_BY_SIDE_FROM_EM = 30;

    private List<ScrollPane> parts = List.of();
    private List<Node> nodes = List.of();
    private Optional<ScrollPane> growing = Optional.empty();

    public Side(String id) {
        setId(id);
        getStyleClass().add("side");
    }

    /**
     * Shows these parts; where it shows them already nothing happens, so that what is being typed keeps the caret.
     *
     * @param growing the one that takes what room the others leave
     */
    public void show(List<Node> shown, Node growing) {
        if (shown.equals(nodes)) return;
        nodes = List.copyOf(shown);
        this.growing = Optional.empty();
        parts = shown.stream().map(node -> part(node, growing)).toList();
        getChildren().setAll(parts);
        requestLayout();
    }

    private ScrollPane part(Node node, Node growing) {
        ScrollPane part = node instanceof ScrollPane scroll ? scroll : new ScrollPane(node);
        part.setFitToWidth(true);
        part.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        part.managedProperty().bind(node.visibleProperty());
        part.getStyleClass().add("side-part");
        part.setFocusTraversable(false);
        if (node == growing) this.growing = Optional.of(part);
        return part;
    }

    private List<ScrollPane> seen() {
        return parts.stream().filter(Node::isManaged).toList();
    }

    @Override
    protected void layoutChildren() {
        double left = snappedLeftInset();
        double width = getWidth() - left - snappedRightInset();
        List<ScrollPane> seen = seen();
        if (seen.isEmpty()) return;
        if (width > SIDE_BY_SIDE_FROM_EM * em()) {
            double each = Math.floor(width / seen.size());
            for (int i = 0; i < seen.size(); i++) seen.get(i).resizeRelocate(left + i * each, 0, each, getHeight());
            return;
        }
        double[] heights = heights(seen, width);
        double top = 0;
        for (int i = 0; i < heights.length; i++) {
            seen.get(i).resizeRelocate(left, top, width, heights[i]);
            top += heights[i];
        }
    }

    /** Every part as high as it likes, none more than half of all, and the growing one what is left. */
    private double[] heights(List<ScrollPane> seen, double width) {
        double[] heights = new double[seen.size()];
        double rest = getHeight();
        for (int i = 0; i < heights.length; i++) {
            ScrollPane part = seen.get(i);
            if (growing.filter(part::equals).isPresent()) continue;
            heights[i] = Math.min(getHeight() / 2, Math.ceil(part.getContent().prefHeight(width)) + 1);
            rest -= heights[i];
        }
        for (int i = 0; i < heights.length; i++) {
            if (growing.filter(seen.get(i)::equals).isPresent()) heights[i] = Math.max(0, rest);
        }
        return heights;
    }

    private double em() {
        return getScene() == null ? 14 : Looks.em(getScene());
    }

    @Override
    protected double computePrefHeight(double width) {
        return 280;
    }
}
