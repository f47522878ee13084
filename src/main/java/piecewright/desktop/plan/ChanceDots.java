package piecewright.desktop.plan;

import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;

/** Every way a plan was followed as a dot: full where every act keeps its window, an empty ring where one leaves it. */
final class ChanceDots extends Painted {
    private static final double PITCH = 11;
    private static final double R = 3.4;

    private int all;
    private int kept;

    ChanceDots() {
        super("chance-dots");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    /**
     * @param spoken the same in words
     */
    void show(int members, int keeping, String spoken) {
        all = members;
        kept = keeping;
        setAccessibleText(spoken);
        requestLayout();
        getParent().requestLayout();
    }

    private int columns(double width) {
        return (int) Math.max(1, width / PITCH);
    }

    @Override
    protected double computePrefHeight(double width) {
        int columns = columns(width < 0 ? 280 : width);
        return (all + columns - 1) / columns * PITCH;
    }

    @Override
    protected double computeMinHeight(double width) {
        return computePrefHeight(width);
    }

    @Override
    public javafx.geometry.Orientation getContentBias() {
        return javafx.geometry.Orientation.HORIZONTAL;
    }

    @Override
    protected void paint(GraphicsContext pen) {
        int columns = columns(getWidth());
        pen.setLineWidth(1.3);
        for (int dot = 0; dot < all; dot++) {
            double x = dot % columns * PITCH + PITCH / 2;
            double y = dot / columns * PITCH + PITCH / 2;
            pen.setFill(inks().of(Ink.DAMSON));
            pen.setStroke(inks().of(Ink.CAUTION));
            if (dot < kept) pen.fillOval(x - R, y - R, 2 * R, 2 * R);
            else pen.strokeOval(x - R + 0.5, y - R + 0.5, 2 * R - 1, 2 * R - 1);
        }
    }
}
