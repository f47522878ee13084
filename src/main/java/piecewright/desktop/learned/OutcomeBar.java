package piecewright.desktop.learned;

import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import piecewright.desktop.learned.Compared.Outcome;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;

/** How far an outcome of two pieces is apart: eight chances in ten about a mark for no difference. */
final class OutcomeBar extends Painted {
    private static final double HEIGHT = 22;

    private final Outcome outcome;

    OutcomeBar(Outcome outcome, int number) {
        super("compared-bar-" + number);
        this.outcome = outcome;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(outcome.sentence());
        setMinSize(160, HEIGHT);
        setPrefSize(220, HEIGHT);
        setMaxHeight(HEIGHT);
    }

    private double x(double ratio) {
        return getWidth() / 2 * (1 + ratio);
    }

    @Override
    protected void paint(GraphicsContext pen) {
        double middle = HEIGHT / 2;
        pen.setLineWidth(1);
        pen.setStroke(inks().of(Ink.EDGE));
        pen.strokeLine(0, middle, getWidth(), middle);
        double left = x(outcome.lowRatio());
        double width = Math.max(2, x(outcome.highRatio()) - left);
        pen.setFill(inks().of(Ink.WATER, 0.4));
        pen.fillRoundRect(left, middle - 5, width, 10, 4, 4);
        pen.setStroke(inks().of(Ink.WATER));
        pen.strokeRoundRect(left, middle - 5, width, 10, 4, 4);
        pen.setLineWidth(2.5);
        pen.strokeLine(x(outcome.middleRatio()), middle - 7, x(outcome.middleRatio()), middle + 7);
        pen.setLineWidth(1.5);
        pen.setStroke(inks().of(Ink.INK));
        pen.strokeLine(x(0), 1, x(0), HEIGHT - 1);
    }
}
