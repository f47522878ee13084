package piecewright.desktop.timeline;

import java.time.Instant;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Paint;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Inks;
import piecewright.plan.Availability.Stretch;

/** What a painter paints with, on and from. */
record Drawing(
        GraphicsContext pen,
        PieceChart chart,
        TimeScale scale,
        Lanes lanes,
        double widthPixels,
        double seenPixels,
        Inks inks,
        Font font) {
    /** Left edge of the part that is seen at first; more is painted on either side to be panned to. */
    double seenLeft() {
        return Math.max(0, (widthPixels - seenPixels) / 2);
    }

    double seenRight() {
        return widthPixels - seenLeft();
    }

    /** True when an edge of the part that is seen lies between these pixels. */
    boolean crosses(double left, double right) {
        return left < seenLeft() && right > seenLeft() || left < seenRight() && right > seenRight();
    }

    Font bold() {
        return Font.font("Lato Bold", font.getSize());
    }

    double x(Instant at) {
        return scale.x(at);
    }

    /** True when any of the stretch can be seen. */
    boolean sees(Instant from, Instant until) {
        return x(until) >= 0 && x(from) <= widthPixels;
    }

    boolean sees(Stretch stretch) {
        return sees(stretch.from(), stretch.until());
    }

    void fill(Ink ink) {
        pen.setFill(inks.of(ink));
    }

    void stroke(Ink ink, double width, double... dashes) {
        stroke(inks.of(ink), width, dashes);
    }

    void stroke(Paint paint, double width, double... dashes) {
        pen.setStroke(paint);
        pen.setLineWidth(width);
        pen.setLineDashes(dashes);
    }

    void text(String words, double x, double y, TextAlignment alignment) {
        pen.setTextBaseline(VPos.CENTER);
        pen.setTextAlign(alignment);
        pen.fillText(words, x, y);
    }

    /** A width that text of so many letters surely needs. */
    double roughWidth(String words) {
        return words.length() * font.getSize() * 0.52;
    }

    /** Half a pixel, so that a line one pixel wide is sharp. */
    static double sharp(double pixel) {
        return Math.floor(pixel) + 0.5;
    }
}
