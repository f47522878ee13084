package piecewright.desktop.timeline;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.paint.Color;
import javafx.scene.paint.ImagePattern;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.plan.Availability.Stretch;

/** Nights, hours away, days and grid: everything that lies behind the piece. */
final class ShadePainter {
    private static final int HATCH_PIXELS = 7;
    private static final double QUIET_RATIO = 0.42;
    private static final int[] HOUR_STEPS = {1, 2, 3, 6, 12};

    private final DateTimeFormatter longDay;
    private final DateTimeFormatter shortDay;

    ShadePainter(Locale locale) {
        this.longDay = DateTimeFormatter.ofPattern("EEE d", locale);
        this.shortDay = DateTimeFormatter.ofPattern("d", locale);
    }

    void paint(Drawing on) {
        Lanes lanes = on.lanes();
        on.fill(Ink.SURFACE);
        on.pen().fillRect(0, 0, on.widthPixels(), lanes.bottom());
        on.fill(Ink.NIGHT);
        for (Stretch night : on.chart().frame().nights()) if (on.sees(night)) column(on, night, lanes.bottom());
        hatch(on);
        grid(on);
        days(on);
        rules(on);
    }

    private static void column(Drawing on, Stretch stretch, double bottom) {
        double top = on.lanes().acts().top();
        double left = on.x(stretch.from());
        on.pen().fillRect(left, top, on.x(stretch.until()) - left, bottom - top);
    }

    private static void hatch(Drawing on) {
        double actsBottom = on.lanes().acts().bottom();
        for (Stretch away : on.chart().frame().away()) {
            if (!on.sees(away)) continue;
            double left = on.x(away.from());
            double width = on.x(away.until()) - left;
            double top = on.lanes().acts().top();
            on.pen().setFill(pattern(on, 1, left));
            on.pen().fillRect(left, top, width, actsBottom - top);
            on.pen().setFill(pattern(on, QUIET_RATIO, left));
            on.pen().fillRect(left, actsBottom, width, on.lanes().bottom() - actsBottom);
        }
    }

    /** A tile that moves with what it fills. */
    private static ImagePattern pattern(Drawing on, double strengthRatio, double left) {
        WritableImage tile = new WritableImage(HATCH_PIXELS, HATCH_PIXELS);
        PixelWriter pixels = tile.getPixelWriter();
        Color hatch = (Color) on.inks().of(Ink.HATCH, strengthRatio);
        Color soft = (Color) on.inks().of(Ink.HATCH, strengthRatio * 0.3);
        for (int i = 0; i < HATCH_PIXELS; i++) {
            int y = HATCH_PIXELS - 1 - i;
            pixels.setColor(i, y, hatch);
            pixels.setColor((i + 1) % HATCH_PIXELS, y, soft);
        }
        double anchor = left - Math.floor(left / HATCH_PIXELS) * HATCH_PIXELS;
        return new ImagePattern(tile, anchor, 0, HATCH_PIXELS, HATCH_PIXELS, false);
    }

    private static void grid(Drawing on) {
        on.stroke(Ink.GRID, 1);
        for (Scales.Tick tick : Scales.ticks(on.chart(), on.lanes())) {
            double y = Drawing.sharp(tick.y());
            on.pen().strokeLine(0, y, on.widthPixels(), y);
        }
        double fold = Drawing.sharp(Scales.foldY(on.chart(), on.lanes()));
        on.stroke(Ink.INK_3, 1);
        on.pen().beginPath();
        on.pen().moveTo(0, fold);
        for (double x = 0; x < on.widthPixels(); x += 10) {
            on.pen().lineTo(x + 2.5, fold - 2.5);
            on.pen().lineTo(x + 7.5, fold + 2.5);
            on.pen().lineTo(x + 10, fold);
        }
        on.pen().stroke();
    }

    private void days(Drawing on) {
        ZoneId zone = on.chart().frame().zone();
        LocalDate day = LocalDate.ofInstant(on.scale().at(0), zone);
        LocalDate last = LocalDate.ofInstant(on.scale().at(on.widthPixels()), zone);
        double dayPixels = 24 * on.scale().pixelsPerHour();
        int every = Math.max(1, (int) Math.ceil(on.roughWidth("30") * 1.6 / dayPixels));
        for (; !day.isAfter(last); day = day.plusDays(1)) {
            double left = on.x(day.atStartOfDay(zone).toInstant());
            double right = on.x(day.plusDays(1).atStartOfDay(zone).toInstant());
            on.stroke(Ink.LINE, 1);
            on.pen()
                    .strokeLine(
                            Drawing.sharp(left),
                            4,
                            Drawing.sharp(left),
                            on.lanes().bottom());
            if (day.toEpochDay() % every == 0) heading(on, day, left, right);
            if (dayPixels > 190) hours(on, day);
        }
    }

    private void heading(Drawing on, LocalDate day, double left, double right) {
        boolean weekend = day.getDayOfWeek() == DayOfWeek.SATURDAY || day.getDayOfWeek() == DayOfWeek.SUNDAY;
        String words = longDay.format(day);
        if (on.roughWidth(words) + 6 > right - left) words = shortDay.format(day);
        on.pen().setFont(weekend ? on.bold() : on.font());
        on.fill(weekend ? Ink.INK : Ink.INK_2);
        double needed = on.roughWidth(words);
        double y = on.lanes().days().height() / 2;
        double from = on.crosses(left, right) ? Math.max(on.seenLeft(), left) : left;
        double until = on.crosses(left, right) ? Math.min(on.seenRight(), right) : right;
        if (until - from >= needed) on.text(words, (from + until) / 2, y, TextAlignment.CENTER);
        else if (!on.crosses(left, left + needed * 1.3)) on.text(words, left + 3, y, TextAlignment.LEFT);
    }

    private static void hours(Drawing on, LocalDate day) {
        ZoneId zone = on.chart().frame().zone();
        double needed = on.roughWidth("00:00") * 1.7;
        int step = 12;
        for (int i = HOUR_STEPS.length - 1; i >= 0; i--) {
            if (HOUR_STEPS[i] * on.scale().pixelsPerHour() >= needed) step = HOUR_STEPS[i];
        }
        on.pen().setFont(on.font());
        ZonedDateTime at = day.atStartOfDay(zone);
        for (int hour = step; hour < 24; hour += step) {
            Instant instant = at.withHour(hour).toInstant();
            double x = Drawing.sharp(on.x(instant));
            on.stroke(Ink.GRID, 1);
            on.pen().strokeLine(x, on.lanes().acts().top(), x, on.lanes().bottom());
            on.fill(Ink.INK_3);
            on.text(
                    String.format(Locale.ROOT, "%02d", hour),
                    x,
                    on.lanes().acts().top() + 9,
                    TextAlignment.CENTER);
        }
    }

    private static void rules(Drawing on) {
        on.stroke(Ink.EDGE, 1);
        double top = Drawing.sharp(on.lanes().acts().top());
        on.pen().strokeLine(0, top, on.widthPixels(), top);
        on.stroke(Ink.LINE, 1);
        Lanes lanes = on.lanes();
        for (Lanes.Band band : new Lanes.Band[] {
            lanes.acts(), lanes.others(), lanes.ribbon(), lanes.moisture(), lanes.heat(), lanes.growth()
        }) {
            double y = Drawing.sharp(band.bottom());
            on.pen().strokeLine(0, y, on.widthPixels(), y);
        }
    }
}
