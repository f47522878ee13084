package piecewright.desktop.shell;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;

/** One window, three zones: what is on the go, what is looked at, and what belongs beside it. */
public final class Shell {
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final PseudoClass TIGHT = PseudoClass.getPseudoClass("tight");
    /** In sizes of text, as are all widths the zones need. */
    private static final double NARROW_BELOW_EM = 82;

    private static final double TIGHT_BELOW_EM = 56;
    private static final double BELOW_RATIO = 0.42;

    private final BorderPane root = new BorderPane();
    private final BorderPane looked = new BorderPane();
    private Optional<Node> side = Optional.empty();
    private Looks looks = Looks.usual();

    public Shell(Rail rail) {
        root.getStyleClass().add("shell");
        root.setLeft(rail.node());
        root.setCenter(looked);
        root.widthProperty().addListener((width, before, now) -> narrow());
        root.heightProperty().addListener((height, before, now) -> placeSide());
    }

    public Parent node() {
        return root;
    }

    /** Shows a screen, with what belongs beside it where there is something. */
    public void show(Node screen, Optional<Node> beside) {
        boolean leaves = looked.getCenter() != screen && holdsFocus();
        // else the toolkit hands it to whatever button comes next, and the next key presses that
        if (leaves) root.requestFocus();
        looked.setCenter(screen);
        side = beside;
        placeSide();
    }

    /** Whether what has the focus lies in what is looked at. */
    private boolean holdsFocus() {
        Node focused = root.getScene() == null ? null : root.getScene().getFocusOwner();
        while (focused != null && focused != looked) focused = focused.getParent();
        return focused == looked;
    }

    private void narrow() {
        double em = Looks.em(looks.textPercent());
        root.pseudoClassStateChanged(NARROW, root.getWidth() < NARROW_BELOW_EM * em);
        root.pseudoClassStateChanged(TIGHT, root.getWidth() < TIGHT_BELOW_EM * em);
    }

    public void dress(Looks changed) {
        looks = changed;
        looks.on(root.getScene());
        narrow();
        placeSide();
    }

    private void placeSide() {
        looked.setRight(null);
        looked.setBottom(null);
        side.ifPresent(node -> {
            if (looks.sheetBelow()) looked.setBottom(node);
            else looked.setRight(node);
            if (node instanceof Region region) {
                double below = Math.round(root.getHeight() * BELOW_RATIO);
                region.setMaxWidth(looks.sheetBelow() ? Double.MAX_VALUE : Region.USE_COMPUTED_SIZE);
                region.setPrefHeight(looks.sheetBelow() ? below : Region.USE_COMPUTED_SIZE);
                region.setMaxHeight(looks.sheetBelow() ? below : Double.MAX_VALUE);
            }
        });
    }
}
