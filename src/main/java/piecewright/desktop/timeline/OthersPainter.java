package piecewright.desktop.timeline;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking;

/** Other pieces under way, a row each: dashed while one keeps kit, full where somebody works on it. */
final class OthersPainter {
    static final int MOST_ROWS = 4;
    private static final double LEAST_BLOCK = 4;

    private OthersPainter() {}

    /** Rows these pieces take; where there are too many the last row holds all that are left. */
    static int rows(List<Booking> besides) {
        return Math.min(MOST_ROWS, besides.size());
    }

    static void paint(Drawing on) {
        List<Booking> besides = on.chart().frame().besides();
        if (besides.isEmpty()) return;
        int rows = rows(besides);
        double height = (on.lanes().others().height() - 6) / rows;
        for (int i = 0; i < besides.size(); i++) {
            double top = on.lanes().others().top() + 3 + Math.min(i, rows - 1) * height;
            one(on, besides.get(i), top, height);
        }
    }

    private static void one(Drawing on, Booking booking, double top, double height) {
        Instant from = booking.hands().stream()
                .map(Stretch::from)
                .min(Comparator.naturalOrder())
                .orElse(Instant.MAX);
        Instant until = booking.kit().stream()
                .map(taken -> taken.stretch().until())
                .max(Comparator.naturalOrder())
                .orElse(Instant.MIN);
        if (!on.sees(from, until)) return;
        double left = Math.max(-8, on.x(from));
        double right = Math.min(on.widthPixels() + 8, on.x(until));
        on.fill(Ink.PAPER);
        on.pen().fillRoundRect(left, top + 1, right - left, height - 2, 5, 5);
        on.stroke(Ink.EDGE, 1, 4, 3);
        on.pen().strokeRoundRect(left, top + 1, right - left, height - 2, 5, 5);
        on.pen().setLineDashes();
        on.fill(Ink.INK_3);
        for (Stretch hands : booking.hands()) {
            if (!on.sees(hands)) continue;
            double width = Math.max(LEAST_BLOCK, on.x(hands.until()) - on.x(hands.from()));
            on.pen().fillRect(on.x(hands.from()), top + height - 6, width, 5);
        }
        name(on, booking.batch(), Math.max(left, on.seenLeft()) + 6, top + (height - 5) / 2);
    }

    private static void name(Drawing on, String name, double x, double y) {
        on.pen().setFont(on.font());
        on.fill(Ink.INK_2);
        on.text(name, x, y, TextAlignment.LEFT);
    }
}
