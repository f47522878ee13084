package piecewright.desktop.timeline;

import javafx.scene.canvas.GraphicsContext;
import piecewright.desktop.paint.Ink;

/** Measured figures over the forecast: weighed a ring, read a cross, counted a triangle. */
final class DotPainter {
    private static final double R = 4.5;

    private DotPainter() {}

    static void paint(Drawing on) {
        FoldedScale heat = Scales.heat(on.chart());
        for (PieceChart.Dot dot : on.chart().dots()) {
            double x = on.x(dot.at());
            if (x < -R || x > on.widthPixels() + R) continue;
            GraphicsContext pen = on.pen();
            on.fill(Ink.SURFACE);
            switch (dot.kind()) {
                case WEIGHED -> {
                    double y = Scales.moistureY(on.lanes(), dot.figure());
                    on.stroke(Ink.WATER, 2);
                    pen.fillOval(x - R, y - R, 2 * R, 2 * R);
                    pen.strokeOval(x - R, y - R, 2 * R, 2 * R);
                }
                case READ -> {
                    double y = on.lanes().heat().y(heat.heightRatio(dot.figure()));
                    on.stroke(Ink.RASPBERRY, 2);
                    pen.strokeLine(x - R, y - R, x + R, y + R);
                    pen.strokeLine(x - R, y + R, x + R, y - R);
                }
                case COUNTED -> {
                    double y = Scales.growthY(on.lanes(), dot.figure());
                    on.stroke(Ink.LEAF, 2);
                    double[] xs = {x - R, x + R, x};
                    double[] ys = {y + R, y + R, y - R};
                    pen.fillPolygon(xs, ys, 3);
                    pen.strokePolygon(xs, ys, 3);
                }
            }
        }
    }
}
