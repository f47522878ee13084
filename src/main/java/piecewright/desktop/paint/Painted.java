package piecewright.desktop.paint;

import java.util.List;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;

/**
 * Something painted by hand on one canvas as large as itself; painted anew when its inks, its text size or what it shows
 * changed. Its text grows with the text of the window.
 */
public abstract class Painted extends Region implements Inked {
    private static final List<CssMetaData<? extends Styleable, ?>> META = Inks.and(Region.getClassCssMetaData());

    private final Canvas canvas = new Canvas();
    private final TextSize text = new TextSize(this::textSized);
    private final Inks inks = new Inks(this, this::requestLayout);

    protected Painted(String id) {
        setId(id);
        getStyleClass().add("inked");
        getChildren().addAll(canvas, text.node());
    }

    /** Paints everything on a clean canvas. */
    protected abstract void paint(GraphicsContext pen);

    /** The size of the text of the window changed; what depends on it may change its least size. */
    protected void textSized() {
        requestLayout();
    }

    @Override
    protected final void layoutChildren() {
        canvas.setWidth(getWidth());
        canvas.setHeight(getHeight());
        GraphicsContext pen = canvas.getGraphicsContext2D();
        pen.clearRect(0, 0, getWidth(), getHeight());
        paint(pen);
    }

    /** Size of the window's text, pixels. */
    protected final double em() {
        return text.em();
    }

    /** The window's font, a share of its size. */
    protected final Font plain(double ofEm) {
        return Font.font("Lato", em() * ofEm);
    }

    protected final Font semibold(double ofEm) {
        return Font.font("Lato Semibold", em() * ofEm);
    }

    protected final Font bold(double ofEm) {
        return Font.font("Lato Bold", em() * ofEm);
    }

    @Override
    public final Inks inks() {
        return inks;
    }

    @Override
    public final List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return META;
    }
}
