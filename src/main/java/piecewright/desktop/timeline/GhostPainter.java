package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Optional;
import piecewright.desktop.paint.Ink;

/** The plan as it stood before: its moved acts dashed above the new ones with an arrow to where they went, its line. */
final class GhostPainter {
    private GhostPainter() {}

    static void paint(Drawing on, PieceChart before) {
        on.stroke(Ink.INK_3, 1.5, 4, 3);
        DataPainter.line(on, before.traces().moisture(), percent -> Scales.moistureY(on.lanes(), percent));
        double side = on.lanes().marker();
        double top = on.lanes().acts().top() + 4;
        double foot = on.lanes().acts().bottom() - 6;
        for (ActMark old : before.acts()) {
            Optional<Instant> now = on.chart().act(old.id()).map(ActMark::at);
            if (now.isPresent() && now.get().equals(old.at())) continue;
            double x = on.x(old.at());
            if (x < -side || x > on.widthPixels() + side) continue;
            on.stroke(Ink.INK_3, 1.2, 3, 2);
            ActPainter.outline(on, old.shape(), x - side / 2, top);
            on.pen().stroke();
            if (now.isPresent()) arrow(on, x, top + side, on.x(now.get()), foot);
            else {
                on.stroke(Ink.CAUTION, 2);
                on.pen().strokeLine(x - side / 2, top + side - 2, x + side / 2, top + 2);
            }
        }
        on.pen().setLineDashes();
    }

    private static void arrow(Drawing on, double fromX, double fromY, double toX, double toY) {
        on.stroke(Ink.DAMSON, 1.3);
        on.pen().beginPath();
        on.pen().moveTo(fromX, fromY);
        double middle = (fromY + toY) / 2;
        on.pen().bezierCurveTo(fromX, middle, toX, middle, toX, toY - 2);
        on.pen().stroke();
        on.pen().strokeLine(toX - 4, toY - 7, toX, toY - 1);
        on.pen().strokeLine(toX + 4, toY - 7, toX, toY - 1);
    }
}
