package piecewright.desktop.act;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.plan.Window;
import piecewright.text.MomentFormat;

/** The window of an act as a wedge: flat and thick while free of harm, a slope while it costs, a wall at the end. */
final class SlipWedge extends Painted {
    private static final double FOOT = 34;

    private final MomentFormat moments;
    private Optional<Shown> shown = Optional.empty();

    private record Shown(Window window, Instant at) {}

    SlipWedge(MomentFormat moments) {
        super("slip-wedge");
        this.moments = moments;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        textSized();
    }

    @Override
    protected void textSized() {
        setMinHeight(Math.ceil(FOOT + 1.4 * em()));
        setPrefHeight(getMinHeight());
        requestLayout();
    }

    /**
     * @param spoken the same in words
     */
    void show(Window window, Instant at, String spoken) {
        shown = Optional.of(new Shown(window, at));
        setAccessibleText(spoken);
        requestLayout();
    }

    @Override
    protected void paint(GraphicsContext pen) {
        shown.ifPresent(act -> paint(pen, act));
    }

    private void paint(GraphicsContext pen, Shown act) {
        Instant from = act.window().earliest();
        double seconds =
                Math.max(60, Duration.between(from, act.window().hardLatest()).toSeconds());
        double width = getWidth() - 28;
        double free = 14 + width * Duration.between(from, act.window().latest()).toSeconds() / seconds;
        double at = 14 + width * Duration.between(from, act.at()).toSeconds() / seconds;
        double wall = 14 + width;
        pen.setFill(inks().of(Ink.DAMSON_SOFT));
        pen.fillPolygon(new double[] {free, wall, wall}, new double[] {FOOT - 4, 6, FOOT}, 3);
        pen.fillRect(free, FOOT - 4, wall - free, 4);
        pen.setStroke(inks().of(Ink.INK_2));
        pen.setLineWidth(1.5);
        pen.strokeLine(free, FOOT - 4, wall, 6);
        pen.setFill(inks().of(Ink.DAMSON));
        pen.fillRoundRect(14, FOOT - 5, Math.max(4, free - 14), 5, 2, 2);
        pen.setFill(inks().of(Ink.INK));
        pen.fillRect(wall - 1.5, 4, 3, FOOT - 4);
        pen.setStroke(inks().of(Ink.EDGE));
        pen.setLineWidth(1);
        pen.strokeLine(0, FOOT + 0.5, getWidth(), FOOT + 0.5);
        pen.setFill(inks().of(Ink.DAMSON));
        pen.fillPolygon(new double[] {at - 6, at + 6, at}, new double[] {FOOT + 9, FOOT + 9, FOOT + 1}, 3);
        labels(pen, act, free, wall);
    }

    private void labels(GraphicsContext pen, Shown act, double free, double wall) {
        pen.setFont(plain(0.8));
        pen.setTextBaseline(VPos.BOTTOM);
        pen.setFill(inks().of(Ink.INK_2));
        pen.setTextAlign(TextAlignment.LEFT);
        pen.fillText(moments.clock(act.window().earliest()), 12, getHeight());
        double room = pen.getFont().getSize() * 3.2;
        if (free > 12 + 1.5 * room && wall - free > 1.5 * room) {
            pen.setTextAlign(TextAlignment.CENTER);
            pen.fillText(moments.clock(act.window().latest()), free, getHeight());
        }
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.fillText(moments.clock(act.window().hardLatest()), wall + 2, getHeight());
    }
}
