package piecewright.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;

/** How times grow, as one SVG picture: a panel per axis, the nearest a + b·n·log n dashed beside what was measured. */
public final class GrowthChart {
    private static final double PANEL = 270;
    private static final double LEFT_X = 44;
    private static final double PANEL_WIDTH = 210;
    private static final double TOP_Y = 56;
    private static final double BOTTOM_Y = 250;
    private static final double HEIGHT = 300;
    private static final Letters NOTE = Letters.PLAIN.sized(11);

    private final Drawing pen = new Drawing(new Markup());
    private final double mostMs;

    private GrowthChart(double mostMs) {
        this.mostMs = mostMs;
    }

    /** The picture; ends with a line end. */
    public static String of(List<GrowthCurve> curves) {
        double most = curves.stream().mapToDouble(GrowthCurve::mostMs).max().orElse(1);
        GrowthChart chart = new GrowthChart(100 * Math.ceil(most / 100));
        String title = "How the time of a search grows";
        chart.pen.begin(curves.size() * PANEL + 20, HEIGHT, title, "Processor time against days, hours and acts");
        chart.pen.words(
                4,
                18,
                title + ", ms on one thread; dashed: nearest a + b · n · log n",
                Letters.PLAIN.sized(14).bold());
        for (int i = 0; i < curves.size(); i++) chart.panel(curves.get(i), i * PANEL + LEFT_X);
        chart.pen.end();
        return chart.pen.markup().written() + "\n";
    }

    private void panel(GrowthCurve curve, double leftX) {
        double[] sizes = curve.sizes();
        ValueScale across = ValueScale.straight(0, sizes[sizes.length - 1], leftX, leftX + PANEL_WIDTH);
        ValueScale up = ValueScale.straight(0, mostMs, BOTTOM_Y, TOP_Y);
        levels(up, leftX);
        List<Spot> measured = new ArrayList<>();
        List<Spot> linearLog = new ArrayList<>();
        for (int i = 0; i < sizes.length; i++) {
            double x = across.y(sizes[i]);
            measured.add(new Spot(x, up.y(curve.cpuMs()[i])));
            linearLog.add(new Spot(x, up.y(curve.linearLogMs(sizes[i]))));
            pen.words(x, BOTTOM_Y + 15, Drawing.number(sizes[i]), Frame.TICK.centred());
        }
        pen.through(linearLog, Stroke.of(Ink.QUIET, 1.4).dashed("5 3"));
        pen.through(measured, Stroke.of(Ink.WATER, 2.4));
        pen.words(leftX, TOP_Y - 10, curve.along(), Letters.PLAIN.bold());
        pen.words(leftX, BOTTOM_Y + 36, String.format(Locale.ROOT, "nearest power n^%.2f", curve.power()), NOTE);
    }

    private void levels(ValueScale up, double leftX) {
        for (int quarter = 0; quarter <= 4; quarter++) {
            double ms = mostMs * quarter / 4;
            pen.line(new Spot(leftX, up.y(ms)), new Spot(leftX + PANEL_WIDTH, up.y(ms)), Stroke.of(Ink.GRID, 1));
            pen.words(leftX - 6, up.y(ms) + 4, Drawing.number(ms), Frame.TICK.ending());
        }
    }
}
