package piecewright.desktop.timeline;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.timeline.PieceChart.Ribbon;
import piecewright.desktop.timeline.PieceChart.Texture;

/** What the grain does between acts, as a thin labelled band of textures. */
final class RibbonPainter {
    void paint(Drawing on) {
        double top = on.lanes().ribbon().top() + 6;
        double height = on.lanes().ribbon().height() - 12;
        for (Ribbon ribbon : on.chart().ribbons()) {
            if (!on.sees(ribbon.from(), ribbon.until())) continue;
            double left = Math.max(-8, on.x(ribbon.from()));
            double right = Math.min(on.widthPixels() + 8, on.x(ribbon.until()));
            one(on, ribbon, new Box(left, top, right - left, height));
        }
    }

    private record Box(double left, double top, double width, double height) {}

    private static void one(Drawing on, Ribbon ribbon, Box box) {
        GraphicsContext pen = on.pen();
        on.fill(fill(ribbon.texture()));
        pen.fillRoundRect(box.left(), box.top(), box.width(), box.height(), 6, 6);
        pen.save();
        pen.beginPath();
        pen.rect(box.left(), box.top(), box.width(), box.height());
        pen.clip();
        texture(on, ribbon.texture(), box);
        pen.restore();
        on.stroke(outline(ribbon.texture()), 1.5);
        pen.strokeRoundRect(box.left(), box.top(), box.width(), box.height(), 6, 6);
        label(on, ribbon, box);
    }

    private static void label(Drawing on, Ribbon ribbon, Box box) {
        double needed = on.roughWidth(ribbon.title());
        double left = box.left();
        double right = box.left() + box.width();
        if (Math.min(right, on.seenRight()) - Math.max(left, on.seenLeft()) >= needed + 6) {
            left = Math.max(left, on.seenLeft());
            right = Math.min(right, on.seenRight());
        }
        if (right - left < needed + 6) return;
        double middle = (left + right) / 2;
        double y = box.top() + box.height() / 2;
        if (ribbon.texture() != Texture.BLANK && ribbon.texture() != Texture.PLAIN) {
            on.fill(fill(ribbon.texture()));
            on.pen().fillRect(middle - needed / 2 - 4, box.top() + 3, needed + 8, box.height() - 6);
        }
        on.pen().setFont(on.bold());
        on.fill(Ink.INK);
        on.text(ribbon.title(), middle, y, TextAlignment.CENTER);
    }

    private static Ink fill(Texture texture) {
        return switch (texture) {
            case WAVES -> Ink.FILL_SOAK;
            case BLANK -> Ink.SURFACE;
            case PLAIN, LINES -> Ink.FILL_FLOOR;
            case DOTS -> Ink.FILL_COUCH;
            case UPRIGHTS -> Ink.FILL_KILN;
        };
    }

    private static Ink outline(Texture texture) {
        return switch (texture) {
            case WAVES -> Ink.WATER;
            case BLANK -> Ink.EDGE;
            case PLAIN, LINES -> Ink.LEAF;
            case DOTS -> Ink.DAMSON;
            case UPRIGHTS -> Ink.RASPBERRY;
        };
    }

    private static void texture(Drawing on, Texture texture, Box box) {
        on.pen().setStroke(on.inks().of(outline(texture), 0.45));
        on.pen().setLineWidth(1);
        on.pen().setLineDashes();
        switch (texture) {
            case WAVES -> waves(on.pen(), box);
            case LINES -> {
                for (double y = box.top() + 5; y < box.top() + box.height(); y += 5) {
                    on.pen().strokeLine(box.left(), Drawing.sharp(y), box.left() + box.width(), Drawing.sharp(y));
                }
            }
            case UPRIGHTS -> {
                for (double x = box.left() + 6; x < box.left() + box.width(); x += 6) {
                    on.pen().strokeLine(Drawing.sharp(x), box.top(), Drawing.sharp(x), box.top() + box.height());
                }
            }
            case DOTS -> {
                on.pen().setFill(on.inks().of(outline(texture), 0.5));
                for (double x = box.left() + 5; x < box.left() + box.width(); x += 8) {
                    for (double y = box.top() + 5; y < box.top() + box.height(); y += 7) {
                        on.pen().fillOval(x, y, 1.6, 1.6);
                    }
                }
            }
            case BLANK, PLAIN -> {}
        }
    }

    private static void waves(GraphicsContext pen, Box box) {
        for (double y = box.top() + 5; y < box.top() + box.height(); y += 6) {
            pen.beginPath();
            pen.moveTo(box.left(), y);
            for (double x = box.left(); x < box.left() + box.width(); x += 8) {
                pen.quadraticCurveTo(x + 2, y - 3, x + 4, y);
                pen.quadraticCurveTo(x + 6, y + 3, x + 8, y);
            }
            pen.stroke();
        }
    }
}
