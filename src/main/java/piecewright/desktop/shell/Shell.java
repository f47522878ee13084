package piecewright.desktop.shell;

import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Region;

/** One window, three zones: what is on the go, what is looked at, and the sheet of one act. */
public final class Shell {
    private static final PseudoClass NARROW = PseudoClass.getPseudoClass("narrow");
    private static final double NARROW_BELOW = 1150;

    private final BorderPane root = new BorderPane();
    private Optional<Node> sheet = Optional.empty();
    private Looks looks = Looks.usual();

    public Shell(Rail rail) {
        root.getStyleClass().add("shell");
        root.setLeft(rail.node());
        root.widthProperty()
                .addListener(
                        (width, before, now) -> root.pseudoClassStateChanged(NARROW, now.doubleValue() < NARROW_BELOW));
    }

    public Parent node() {
        return root;
    }

    /** Shows a screen, with the sheet beside it where it has one. */
    public void show(Node screen, Optional<Node> beside) {
        root.setCenter(screen);
        sheet = beside;
        placeSheet();
    }

    public void dress(Looks changed) {
        looks = changed;
        looks.on(root.getScene());
        placeSheet();
    }

    private void placeSheet() {
        root.setRight(null);
        root.setBottom(null);
        sheet.ifPresent(node -> {
            if (looks.sheetBelow()) root.setBottom(node);
            else root.setRight(node);
            if (node instanceof Region region) region.setMaxHeight(looks.sheetBelow() ? 280 : Double.MAX_VALUE);
        });
    }
}
