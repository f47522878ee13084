package piecewright.desktop.learned;

import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import piecewright.desktop.learned.LearnedViewModel.Bar;
import piecewright.desktop.learned.LearnedViewModel.Row;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;

/** What was believed before as a hollow bar, what is believed now as a full one under it; a stroke at each middle. */
final class IntervalBar extends Painted {
    private final Row row;

    IntervalBar(Row row, int number) {
        super("learned-bar-" + number);
        this.row = row;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(row.title() + ": " + row.beforeWords() + "; " + row.nowWords());
        setMinSize(160, 30);
        setPrefSize(360, 30);
        setMaxHeight(30);
    }

    @Override
    protected void paint(GraphicsContext pen) {
        double width = getWidth() - 16;
        pen.setStroke(inks().of(Ink.LINE));
        pen.setLineWidth(1);
        pen.strokeLine(0, 15.5, getWidth(), 15.5);
        double beforeX = 8 + width * row.before().lowRatio();
        double beforeWidth = width * (row.before().highRatio() - row.before().lowRatio());
        pen.setStroke(inks().of(Ink.INK_3));
        pen.setLineWidth(1.2);
        pen.strokeRoundRect(beforeX, 4.5, beforeWidth, 8, 4, 4);
        middle(pen, row.before(), 2.5, 14.5, Ink.INK_3);
        double nowX = 8 + width * row.now().lowRatio();
        double nowWidth = width * (row.now().highRatio() - row.now().lowRatio());
        pen.setFill(inks().of(Ink.WATER, 0.4));
        pen.fillRoundRect(nowX, 18, Math.max(2, nowWidth), 8, 4, 4);
        pen.setStroke(inks().of(Ink.WATER));
        pen.strokeRoundRect(nowX, 18, Math.max(2, nowWidth), 8, 4, 4);
        middle(pen, row.now(), 16, 28, Ink.WATER);
    }

    private void middle(GraphicsContext pen, Bar bar, double top, double bottom, Ink ink) {
        double x = Math.floor(8 + (getWidth() - 16) * bar.middleRatio()) + 0.5;
        pen.setStroke(inks().of(ink));
        pen.setLineWidth(2);
        pen.strokeLine(x, top, x, bottom);
        pen.setLineWidth(1.2);
    }
}
