package piecewright.desktop.grain;

import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import piecewright.assess.Counted;
import piecewright.assess.Interval;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;

/** The share that grows with its 95 % interval, against the marks by which malters judge. */
final class ShareBar extends Painted {
    private static final int[] MARKS_PERCENT = {90, 95, 98};

    private final Counted counted;

    ShareBar(Counted counted, String spoken) {
        super("share-bar");
        this.counted = counted;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(spoken);
        setMaxWidth(560);
        textSized();
    }

    @Override
    protected void textSized() {
        setMinHeight(Math.ceil(44 + em()));
        requestLayout();
    }

    @Override
    protected void paint(GraphicsContext pen) {
        Interval interval = counted.wilson();
        double least = Math.min(0.8, Math.floor(interval.lowFraction() * 10) / 10);
        double scale = (getWidth() - 24) / (1 - least);
        double y = 30;
        pen.setStroke(inks().of(Ink.EDGE));
        pen.setLineWidth(1);
        pen.strokeLine(12, y + 0.5, getWidth() - 12, y + 0.5);
        pen.setFont(plain(0.86));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.TOP);
        for (int mark : MARKS_PERCENT) {
            double x = Math.floor(12 + (mark / 100.0 - least) * scale) + 0.5;
            pen.setStroke(inks().of(Ink.INK_2));
            pen.strokeLine(x, y - 14, x, y + 8);
            pen.setFill(inks().of(Ink.INK_2));
            pen.fillText(String.format(Locale.ROOT, "%d", mark), x, y + 11);
        }
        double low = 12 + (interval.lowFraction() - least) * scale;
        double high = 12 + (interval.highFraction() - least) * scale;
        pen.setFill(inks().of(Ink.LEAF, 0.35));
        pen.fillRoundRect(low, y - 7, high - low, 14, 6, 6);
        pen.setStroke(inks().of(Ink.LEAF));
        pen.strokeRoundRect(low, y - 7, high - low, 14, 6, 6);
        double at = 12 + (counted.shareFraction() - least) * scale;
        pen.setLineWidth(2.5);
        pen.strokeLine(at, y - 9, at, y + 9);
    }
}
