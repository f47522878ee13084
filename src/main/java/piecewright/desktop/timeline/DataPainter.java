package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.CycleMethod;
import javafx.scene.paint.LinearGradient;
import javafx.scene.paint.Paint;
import javafx.scene.paint.Stop;
import javafx.scene.text.TextAlignment;
import piecewright.colour.Swatch;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.timeline.PieceChart.Lane;
import piecewright.desktop.timeline.PieceChart.Shelf;
import piecewright.text.QuantityFormat;

/** The piece itself: what is wanted, and each figure along time. */
final class DataPainter {
    /** From here on dark letters are hard to read on the wort. */
    private static final double DARK_EBC = 90;

    private final RibbonPainter ribbons = new RibbonPainter();
    private final QuantityFormat quantities;

    DataPainter(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    void paint(Drawing on) {
        ribbons.paint(on);
        for (Shelf shelf : on.chart().shelves()) if (on.sees(shelf.from(), shelf.until())) shelf(on, shelf);
        Lanes lanes = on.lanes();
        PieceChart.Traces traces = on.chart().traces();
        FoldedScale heat = Scales.heat(on.chart());
        PieceChart.Bands bands = on.chart().bands();
        band(
                on,
                bands.grain(),
                on.inks().of(Ink.RASPBERRY, 0.20),
                c -> lanes.heat().y(heat.heightRatio(c)));
        band(on, bands.growth(), on.inks().of(Ink.LEAF, 0.22), grown -> Scales.growthY(lanes, grown));
        band(on, bands.moisture(), on.inks().of(Ink.WATER, 0.22), percent -> Scales.moistureY(lanes, percent));
        on.stroke(Ink.SLATE, 1.5, 2, 3.5);
        line(on, traces.air(), airC -> lanes.heat().y(heat.heightRatio(airC)));
        on.stroke(Ink.RASPBERRY, 2);
        line(on, traces.grain(), grainC -> lanes.heat().y(heat.heightRatio(grainC)));
        on.stroke(Ink.LEAF, 2);
        line(on, traces.growth(), grown -> Scales.growthY(lanes, grown));
        on.stroke(Ink.WATER, 2.5);
        line(on, traces.moisture(), percent -> Scales.moistureY(lanes, percent));
        DotPainter.paint(on);
        colour(on);
        List<Trace.Point> colours = traces.colour().points();
        if (!colours.isEmpty()) {
            ends(
                    on,
                    quantities.colour(colours.get(0).figure()),
                    quantities.colour(colours.get(colours.size() - 1).figure()));
        }
    }

    /** Along the low edge and back along the high one, as far as it can be seen. */
    private static void band(Drawing on, PieceChart.Edges edges, Paint paint, DoubleUnaryOperator y) {
        List<Trace.Point> low = edges.low().points();
        List<Trace.Point> high = edges.high().points();
        if (low.size() < 2) return;
        int first = Math.max(0, edges.low().firstAfter(on.scale().at(-2)) - 1);
        int last = Math.min(low.size() - 1, edges.low().firstAfter(on.scale().at(on.widthPixels() + 2)));
        on.pen().setFill(paint);
        on.pen().beginPath();
        on.pen()
                .moveTo(
                        on.x(low.get(first).at()),
                        y.applyAsDouble(low.get(first).figure()));
        for (int i = first + 1; i <= last; i++) {
            on.pen().lineTo(on.x(low.get(i).at()), y.applyAsDouble(low.get(i).figure()));
        }
        for (int i = last; i >= first; i--) {
            on.pen().lineTo(on.x(high.get(i).at()), y.applyAsDouble(high.get(i).figure()));
        }
        on.pen().closePath();
        on.pen().fill();
    }

    private static void shelf(Drawing on, Shelf shelf) {
        boolean moisture = shelf.lane() == Lane.MOISTURE;
        double high = y(on, shelf, shelf.high());
        double low = y(on, shelf, shelf.low());
        double left = on.x(shelf.from());
        double right = on.x(shelf.until());
        double off = on.font().getSize() * 0.8;
        boolean gate = shelf.low() == shelf.high();
        if (!gate) {
            on.pen().setFill(on.inks().of(Ink.LEAF, 0.14));
            on.pen().fillRect(left, high, right - left, low - high);
        }
        on.stroke(gate ? Ink.CAUTION : Ink.LEAF, 1.5, 5, 3);
        on.pen().strokeLine(left, Drawing.sharp(high), right, Drawing.sharp(high));
        if (!gate) on.pen().strokeLine(left, Drawing.sharp(low), right, Drawing.sharp(low));
        on.pen().setFont(on.font());
        on.fill(gate ? Ink.CAUTION : Ink.LEAF);
        if (gate && right + on.roughWidth(shelf.label()) < on.seenRight()) {
            on.text(shelf.label(), right + 4, high, TextAlignment.LEFT);
        } else if (gate) on.text(shelf.label(), right, high + off, TextAlignment.RIGHT);
        else on.text(shelf.label(), left, moisture ? low + off : high - off, TextAlignment.LEFT);
    }

    private static double y(Drawing on, Shelf shelf, double figure) {
        return shelf.lane() == Lane.MOISTURE
                ? Scales.moistureY(on.lanes(), figure)
                : Scales.growthY(on.lanes(), figure);
    }

    /** Only what can be seen, and no more than two points a pixel. */
    static void line(Drawing on, Trace trace, DoubleUnaryOperator y) {
        List<Trace.Point> points = trace.points();
        if (points.size() < 2) return;
        Instant from = on.scale().at(-2);
        Instant until = on.scale().at(on.widthPixels() + 2);
        GraphicsContext pen = on.pen();
        double lastX = Double.NEGATIVE_INFINITY;
        pen.beginPath();
        for (int i = Math.max(0, trace.firstAfter(from) - 1); i < points.size(); i++) {
            Trace.Point point = points.get(i);
            double x = on.x(point.at());
            if (x - lastX < 0.5 && i < points.size() - 1) continue;
            if (lastX == Double.NEGATIVE_INFINITY) pen.moveTo(x, y.applyAsDouble(point.figure()));
            else pen.lineTo(x, y.applyAsDouble(point.figure()));
            lastX = x;
            if (point.at().isAfter(until)) break;
        }
        pen.stroke();
    }

    /** A strip of wort, one centimetre deep, from the green malt to the finished one. */
    private static void colour(Drawing on) {
        List<Trace.Point> points = on.chart().traces().colour().points();
        if (points.size() < 2) return;
        Trace.Point first = points.get(0);
        Trace.Point last = points.get(points.size() - 1);
        double left = on.x(first.at());
        double width = Math.max(1, on.x(last.at()) - left);
        Stop[] stops = new Stop[9];
        for (int i = 0; i < stops.length; i++) {
            double share = i / (stops.length - 1.0);
            Trace.Point point = points.get((int) Math.round(share * (points.size() - 1)));
            Swatch wort = Swatch.ofMalt(point.figure());
            stops[i] = new Stop(share, Color.rgb(wort.red(), wort.green(), wort.blue()));
        }
        double top = on.lanes().colour().top() + 5;
        double height = on.lanes().colour().height() - 10;
        on.pen().setFill(new LinearGradient(left, 0, left + width, 0, false, CycleMethod.NO_CYCLE, stops));
        on.pen().fillRoundRect(left, top, width, height, 4, 4);
        on.stroke(Ink.INK_3, 1);
        on.pen().strokeRoundRect(left, top, width, height, 4, 4);
    }

    private static void ends(Drawing on, String first, String last) {
        List<Trace.Point> points = on.chart().traces().colour().points();
        if (points.isEmpty()) return;
        double left = Math.max(on.seenLeft(), on.x(points.get(0).at()));
        double right =
                Math.min(on.seenRight(), on.x(points.get(points.size() - 1).at()));
        if (right - left < on.roughWidth(first + last) + 24) return;
        double y = on.lanes().colour().top() + on.lanes().colour().height() / 2;
        on.pen().setFont(on.bold());
        on.pen().setFill(Color.rgb(22, 33, 31));
        on.text(first, left + 6, y, TextAlignment.LEFT);
        boolean dark = points.get(points.size() - 1).figure() > DARK_EBC;
        if (dark) on.pen().setFill(Color.WHITE);
        on.text(last, right - 6, y, TextAlignment.RIGHT);
    }
}
