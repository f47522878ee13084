package piecewright.desktop.paint;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

/** Labels of running text, as tall as their words need at any size of text. */
public final class Wrapped {
    private Wrapped() {}

    /** A label of that style class, to be filled later. */
    public static Label words(String style) {
        return words(style, "");
    }

    /** A label of that style class with these words. */
    public static Label words(String style, String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        label.getStyleClass().add(style);
        return label;
    }
}
