package piecewright.desktop.colour;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.colour.ColourField.Barred;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Inks;

/** Says in each crossed-out region why it is out. */
final class BarredLabels {
    private final ColourViewModel model;
    private final Inks inks;
    private final Font font;

    BarredLabels(ColourViewModel model, Inks inks, Font font) {
        this.font = font;
        this.model = model;
        this.inks = inks;
    }

    private record Extent(double sumX, double sumY, int cells) {
        Extent with(double x, double y) {
            return new Extent(sumX + x, sumY + y, cells + 1);
        }
    }

    void paint(GraphicsContext pen, MapFrame frame) {
        Map<Barred, Extent> extents = new EnumMap<>(Barred.class);
        double step = 16;
        for (double y = frame.top() + step / 2; y < frame.bottom(); y += step) {
            for (double x = frame.left() + step / 2; x < frame.right(); x += step) {
                Optional<Barred> barred = frame.field().barred(frame.point(x, y));
                if (barred.isEmpty() || barred.get() == Barred.NOT_THE_STYLE) continue;
                extents.put(
                        barred.get(),
                        extents.getOrDefault(barred.get(), new Extent(0, 0, 0)).with(x, y));
            }
        }
        extents.forEach((barred, extent) -> {
            if (extent.cells() > 12) label(pen, frame, extent, model.barredWords(barred, frame.field()));
        });
    }

    private void label(GraphicsContext pen, MapFrame frame, Extent extent, String words) {
        pen.setFont(font);
        double width =
                Math.min(frame.width() - 8, words.length() * pen.getFont().getSize() * 0.5 + 20);
        double height = pen.getFont().getSize() * 2;
        double x = Math.max(
                frame.left() + 4, Math.min(frame.right() - width - 4, extent.sumX() / extent.cells() - width / 2));
        double y = extent.sumY() / extent.cells() - height / 2;
        pen.setFill(inks.of(Ink.SURFACE));
        pen.fillRoundRect(x, y, width, height, 6, 6);
        pen.setStroke(inks.of(Ink.EDGE));
        pen.strokeRoundRect(x, y, width, height, 6, 6);
        pen.setFill(inks.of(Ink.INK));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        pen.fillText(words, x + width / 2, y + height / 2, width - 12);
    }
}
