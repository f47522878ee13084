package piecewright.desktop.couch;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.desktop.timeline.TimeScale;
import piecewright.desktop.timeline.Trace;
import piecewright.text.DisplayUnits;
import piecewright.text.MomentFormat;
import piecewright.text.QuantityFormat;
import piecewright.text.WindowWords;

/** The thermometer of a couch along its hours: forecast, what was read, the warmth it aims at and its limit. */
final class CouchChart extends Painted {
    private static final double LEAST_C = 15;
    private static final double MOST_C = 60;
    private static final Duration MARGIN = Duration.ofHours(1);

    private final QuantityFormat quantities;
    private final DisplayUnits units;
    private Optional<Drawn> drawn = Optional.empty();

    private record Drawn(CouchCurve curve, ZoneId zone, Instant now) {}

    CouchChart(DisplayUnits units) {
        super("couch-chart");
        this.units = units;
        this.quantities = new QuantityFormat(units);
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(320, 240);
        setPrefSize(700, 420);
    }

    /**
     * @param spoken the same in words
     */
    void show(CouchCurve curve, ZoneId zone, Instant now, String spoken) {
        drawn = Optional.of(new Drawn(curve, zone, now));
        setAccessibleText(spoken);
        requestLayout();
    }

    private double left() {
        return Math.ceil(4 * em());
    }

    private double top() {
        return Math.ceil(1.6 * em());
    }

    private double bottom() {
        return getHeight() - Math.ceil(2.4 * em());
    }

    private double y(double temperatureC) {
        return bottom() - (temperatureC - LEAST_C) / (MOST_C - LEAST_C) * (bottom() - top());
    }

    @Override
    protected void paint(GraphicsContext pen) {
        drawn.ifPresent(what -> {
            Instant from = what.curve().packed().minus(MARGIN);
            Instant until = what.curve().broken().plus(MARGIN);
            TimeScale scale = TimeScale.fitting(from, until, getWidth() - left());
            axes(pen, what, scale, until);
            level(pen, CouchCurve.WARM_C, Ink.LEAF, WindowWords.say("couch.warm", heat(CouchCurve.WARM_C)));
            level(
                    pen,
                    what.curve().limitC(),
                    Ink.STOP,
                    WindowWords.say("couch.limit", heat(what.curve().limitC())));
            forecast(pen, what, scale);
            now(pen, what, scale);
            read(pen, what.curve(), scale);
        });
    }

    private String heat(double temperatureC) {
        return quantities.temperature(temperatureC);
    }

    private double x(TimeScale scale, Instant at) {
        return left() + scale.x(at);
    }

    private void axes(GraphicsContext pen, Drawn what, TimeScale scale, Instant until) {
        pen.setLineDashes();
        pen.setLineWidth(1);
        pen.setFont(plain(0.86));
        pen.setTextBaseline(VPos.CENTER);
        for (double c = 20; c <= MOST_C; c += 10) {
            double y = Math.floor(y(c)) + 0.5;
            pen.setStroke(inks().of(Ink.GRID));
            pen.strokeLine(left(), y, getWidth(), y);
            pen.setFill(inks().of(Ink.INK_3));
            pen.setTextAlign(TextAlignment.RIGHT);
            pen.fillText(heat(c), left() - 8, y);
        }
        MomentFormat moments = new MomentFormat(what.zone(), units.locale());
        int step = scale.pixelsPerHour() * 3 > 4.5 * em() ? 3 : 6;
        ZonedDateTime hour = scale.at(0).atZone(what.zone()).withMinute(0).withSecond(0);
        for (; hour.toInstant().isBefore(until); hour = hour.plusHours(1)) {
            if (hour.getHour() % step != 0) continue;
            double x = Math.floor(x(scale, hour.toInstant())) + 0.5;
            if (x < left()) continue;
            pen.setStroke(inks().of(hour.getHour() == 0 ? Ink.LINE : Ink.GRID));
            pen.strokeLine(x, top(), x, bottom());
            pen.setFill(inks().of(Ink.INK_3));
            pen.setTextAlign(TextAlignment.CENTER);
            if (x + 1.5 * em() > getWidth()) continue;
            pen.fillText(moments.clock(hour.toInstant()), x, bottom() + em() * 0.9);
            if (hour.getHour() == 0 || hour.getHour() == 12) {
                pen.fillText(moments.day(hour.toLocalDate()), x, bottom() + em() * 1.9);
            }
        }
    }

    private void level(GraphicsContext pen, double temperatureC, Ink ink, String words) {
        double y = Math.floor(y(temperatureC)) + 0.5;
        pen.setStroke(inks().of(ink));
        pen.setLineWidth(1.5);
        pen.setLineDashes(5, 3);
        pen.strokeLine(left(), y, getWidth(), y);
        pen.setLineDashes();
        pen.setFill(inks().of(ink));
        pen.setFont(semibold(0.86));
        pen.setTextAlign(TextAlignment.LEFT);
        pen.fillText(words, left() + 8, y - em() * 0.7);
    }

    private void forecast(GraphicsContext pen, Drawn what, TimeScale scale) {
        pen.setStroke(inks().of(Ink.RASPBERRY));
        pen.setLineWidth(2.5);
        pen.beginPath();
        boolean first = true;
        for (Trace.Point point : what.curve().forecast().points()) {
            double x = x(scale, point.at());
            if (first) pen.moveTo(x, y(point.figure()));
            else pen.lineTo(x, y(point.figure()));
            first = false;
        }
        pen.stroke();
        MomentFormat moments = new MomentFormat(what.zone(), units.locale());
        Trace.Point peak = what.curve().peak();
        what.curve().peakBand().ifPresent(band -> {
            double y = Math.floor(y(peak.figure()) - em()) + 0.5;
            pen.setLineWidth(1.5);
            pen.strokeLine(x(scale, band.early()), y, x(scale, band.late()), y);
            pen.strokeLine(x(scale, band.early()), y - 4, x(scale, band.early()), y + 4);
            pen.strokeLine(x(scale, band.late()), y - 4, x(scale, band.late()), y + 4);
        });
        String words = WindowWords.say("couch.peak", heat(peak.figure()), moments.clock(peak.at()));
        mark(pen, x(scale, peak.at()), y(peak.figure()), words);
        what.curve()
                .reaches(CouchCurve.WARM_C)
                .ifPresent(at -> mark(pen, x(scale, at), y(CouchCurve.WARM_C), moments.clock(at)));
    }

    /** A small ring on the curve with words below it. */
    private void mark(GraphicsContext pen, double x, double y, String words) {
        pen.setFill(inks().of(Ink.SURFACE));
        pen.fillOval(x - 4, y - 4, 8, 8);
        pen.setStroke(inks().of(Ink.RASPBERRY));
        pen.setLineWidth(2);
        pen.strokeOval(x - 4, y - 4, 8, 8);
        pen.setFill(inks().of(Ink.INK));
        pen.setFont(bold(0.86));
        boolean right = x + em() * words.length() * 0.5 > getWidth() - 4;
        pen.setTextAlign(right ? TextAlignment.RIGHT : TextAlignment.LEFT);
        pen.fillText(words, right ? x - 8 : x + 8, y + em());
    }

    private void now(GraphicsContext pen, Drawn what, TimeScale scale) {
        double x = Math.floor(x(scale, what.now())) + 0.5;
        if (x < left() || x > getWidth()) return;
        pen.setStroke(inks().of(Ink.DAMSON));
        pen.setLineWidth(2);
        pen.strokeLine(x, top() - em(), x, bottom());
        MomentFormat moments = new MomentFormat(what.zone(), units.locale());
        pen.setFill(inks().of(Ink.DAMSON));
        pen.setFont(bold(0.86));
        pen.setTextAlign(x > getWidth() - 7 * em() ? TextAlignment.RIGHT : TextAlignment.LEFT);
        double beside = x > getWidth() - 7 * em() ? -6 : 6;
        pen.fillText(WindowWords.say("timeline.now", moments.clock(what.now())), x + beside, top() - em() * 0.6);
    }

    private void read(GraphicsContext pen, CouchCurve curve, TimeScale scale) {
        pen.setStroke(inks().of(Ink.INK));
        pen.setLineWidth(2.5);
        for (Trace.Point point : curve.read()) {
            double x = x(scale, point.at());
            double y = y(point.figure());
            pen.strokeLine(x - 5, y - 5, x + 5, y + 5);
            pen.strokeLine(x - 5, y + 5, x + 5, y - 5);
        }
    }
}
