package piecewright.desktop.paint;

import javafx.scene.Node;
import javafx.scene.control.Label;

/** How large the window's text is, for what is laid out or painted by hand; it holds a label that is never seen. */
public final class TextSize {
    private final Label measure = new Label("0");

    /** @param changed told whenever the text becomes another size */
    public TextSize(Runnable changed) {
        measure.setVisible(false);
        measure.setManaged(false);
        measure.fontProperty().addListener((font, before, now) -> changed.run());
    }

    /** To be laid among the children of whoever asks. */
    public Node node() {
        return measure;
    }

    /** Pixels. */
    public double em() {
        return measure.getFont().getSize();
    }
}
