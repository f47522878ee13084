package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.timeline.ActMark.Shape;
import piecewright.desktop.timeline.ActMark.Standing;

/** The markers of acts: shape for the family, letters for the act, filling for what became of it. */
final class ActPainter {
    /** Side on which the outlines are drawn. */
    private static final double SIDE = 24;

    static final int ROWS = 3;
    private static final double WINDOWS_FROM_PIXELS_PER_HOUR = 4;

    private static final Map<Shape, String> OUTLINES = Map.of(
            Shape.DROP, "M12 1 C15 6 21 10 21 15.2 A9 8 0 0 1 3 15.2 C3 10 9 6 12 1 Z",
            Shape.CUP, "M2 3 H22 L18.5 22 H5.5 Z",
            Shape.MOUND, "M2 22 V13 A10 10 0 0 1 22 13 V22 Z",
            Shape.RING, "M12 1.5 A10.5 10.5 0 1 1 11.9 1.5 Z",
            Shape.TICKET, "M2 2 H17 L22 7 V22 H2 Z",
            Shape.ROOF, "M12 1 L22 8.5 V22 H2 V8.5 Z",
            Shape.KEEL, "M2 2 H22 V15.5 L12 23 L2 15.5 Z",
            Shape.GEM, "M12 -1 L25 12 L12 25 L-1 12 Z");

    /** Where the middle of an act's marker lies. */
    static double middleY(Lanes lanes, int row) {
        return lanes.acts().bottom() - 12 - lanes.marker() / 2 - row * (lanes.marker() + 3);
    }

    static int[] rows(PieceChart chart, TimeScale scale, Lanes lanes) {
        double[] xs =
                chart.acts().stream().mapToDouble(act -> scale.x(act.at())).toArray();
        return MarkerRows.of(xs, lanes.marker() + 2, ROWS);
    }

    void paint(Drawing on, String selected) {
        int[] rows = rows(on.chart(), on.scale(), on.lanes());
        double side = on.lanes().marker();
        double foot = on.lanes().acts().bottom() - 6;
        on.stroke(Ink.INK_3, 1);
        on.pen().strokeLine(0, Drawing.sharp(foot), on.widthPixels(), Drawing.sharp(foot));
        if (on.scale().pixelsPerHour() >= WINDOWS_FROM_PIXELS_PER_HOUR) {
            for (ActMark act : on.chart().acts()) window(on, act, foot);
        }
        for (int i = 0; i < rows.length; i++) {
            ActMark act = on.chart().acts().get(i);
            double x = on.x(act.at());
            if (x < -side || x > on.widthPixels() + side) continue;
            on.stroke(Ink.INK_3, 1);
            double y = middleY(on.lanes(), rows[i]);
            on.pen().strokeLine(Drawing.sharp(x), y, Drawing.sharp(x), foot);
        }
        for (int i = 0; i < rows.length; i++) {
            ActMark act = on.chart().acts().get(i);
            double x = on.x(act.at());
            if (x < -side || x > on.widthPixels() + side) continue;
            double y = middleY(on.lanes(), rows[i]);
            if (act.id().equals(selected)) halo(on, act, x, y);
            marker(on, act, x - side / 2, y - side / 2);
        }
    }

    private static void window(Drawing on, ActMark act, double foot) {
        Instant from = act.window().earliest();
        Instant until = act.window().hardLatest();
        if (!on.sees(from, until)) return;
        double left = on.x(from);
        on.fill(Ink.INK_2);
        on.pen().fillRect(left, foot - 1, Math.max(1, on.x(act.window().latest()) - left), 4);
        double hard = on.x(until);
        on.stroke(Ink.INK_2, 1);
        on.pen().strokeLine(on.x(act.window().latest()), foot + 1, hard, foot + 1);
        on.pen().strokeLine(Drawing.sharp(hard), foot - 3, Drawing.sharp(hard), foot + 5);
    }

    private static void halo(Drawing on, ActMark act, double x, double y) {
        on.stroke(on.inks().of(Ink.DAMSON, 0.35), 7);
        double side = on.lanes().marker();
        outline(on, act.shape(), x - side / 2, y - side / 2);
        on.pen().stroke();
        on.stroke(Ink.DAMSON, 2);
        double foot = on.lanes().bottom();
        on.pen().setLineDashes(1.5, 3);
        on.pen().strokeLine(Drawing.sharp(x), on.lanes().acts().bottom(), Drawing.sharp(x), foot);
        on.pen().setLineDashes();
    }

    private static void marker(Drawing on, ActMark act, double left, double top) {
        GraphicsContext pen = on.pen();
        boolean next = act.standing() == Standing.NEXT;
        boolean solid = next || act.standing() == Standing.DONE;
        Ink ink = next ? Ink.DAMSON : Ink.INK_2;
        double side = on.lanes().marker();
        outline(on, act.shape(), left, top);
        on.fill(solid ? ink : Ink.SURFACE);
        pen.fill();
        on.stroke(next ? Ink.DAMSON : Ink.INK_2, 1.5);
        pen.stroke();
        pen.setFont(Font.font("Lato Bold", 10 * side / SIDE));
        on.fill(next ? Ink.ON_DAMSON : solid ? Ink.SURFACE : Ink.INK);
        double low = act.shape() == Shape.DROP || act.shape() == Shape.ROOF || act.shape() == Shape.MOUND ? 2 : 0;
        double high = act.shape() == Shape.KEEL ? 1.5 : 0;
        on.text(act.letters(), left + side / 2, top + side / 2 + (low - high) * side / SIDE, TextAlignment.CENTER);
    }

    static void outline(Drawing on, Shape shape, double left, double top) {
        GraphicsContext pen = on.pen();
        pen.save();
        pen.translate(left, top);
        pen.scale(on.lanes().marker() / SIDE, on.lanes().marker() / SIDE);
        pen.beginPath();
        pen.appendSVGPath(OUTLINES.getOrDefault(shape, ""));
        pen.restore();
    }
}
