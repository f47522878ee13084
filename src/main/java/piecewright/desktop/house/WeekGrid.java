package piecewright.desktop.house;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.house.LocalHours;
import piecewright.house.NightActs;
import piecewright.text.WindowWords;

/** A usual week to paint on: drag with the mouse, or move with arrows, mark with Shift, and press 1 or 2. */
final class WeekGrid extends Painted {
    private static final int STEP = 2;
    private static final double LEAST_EM = 27;

    private final HouseViewModel model;
    private DayOfWeek day = DayOfWeek.MONDAY;
    private int from = 24;
    private int until = 26;
    private boolean freeing = true;

    WeekGrid(HouseViewModel model) {
        super("week-grid");
        this.model = model;
        getStyleClass().add("week-grid");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setMinSize(0, 380);
        setPrefSize(600, 500);
        model.shownProperty().addListener((shown, before, now) -> requestLayout());
        focusedProperty().addListener((focused, before, now) -> requestLayout());
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
        addEventHandler(MouseEvent.MOUSE_RELEASED, event -> paint());
        addEventHandler(KeyEvent.KEY_PRESSED, this::keyPressed);
    }

    @Override
    protected void textSized() {
        setMinHeight(LEAST_EM * em());
        requestLayout();
    }

    /** With which brush the mouse paints. */
    void brushFree() {
        freeing = true;
    }

    void brushAway() {
        freeing = false;
    }

    void paintFree() {
        freeing = true;
        paint();
    }

    void paintAway() {
        freeing = false;
        paint();
    }

    private void paint() {
        PaintedWeek week = model.shownProperty().get().week();
        model.paint(freeing ? week.freed(day, from, until) : week.taken(day, from, until));
        requestLayout();
    }

    private void keyPressed(KeyEvent event) {
        KeyCode code = event.getCode();
        if (code == KeyCode.LEFT) day = day.minus(1);
        else if (code == KeyCode.RIGHT) day = day.plus(1);
        else if (code == KeyCode.UP && event.isShiftDown()) until = Math.max(from + STEP, until - STEP);
        else if (code == KeyCode.DOWN && event.isShiftDown()) until = Math.min(PaintedWeek.QUARTERS, until + STEP);
        else if (code == KeyCode.UP) move(-STEP);
        else if (code == KeyCode.DOWN) move(STEP);
        else if (code == KeyCode.DIGIT1 || code == KeyCode.NUMPAD1) paintFree();
        else if (code == KeyCode.DIGIT2 || code == KeyCode.NUMPAD2) paintAway();
        else return;
        requestLayout();
        event.consume();
    }

    private void move(int by) {
        int length = until - from;
        from = Math.max(0, Math.min(PaintedWeek.QUARTERS - length, from + by));
        until = from + length;
    }

    private void pressed(MouseEvent event) {
        requestFocus();
        day = DayOfWeek.of(1 + (int) Math.max(0, Math.min(6, (event.getX() - left()) / columnWidth())));
        from = quarter(event.getY());
        until = from + 1;
        requestLayout();
    }

    private void dragged(MouseEvent event) {
        int at = quarter(event.getY()) + 1;
        until = Math.max(from + 1, at);
        requestLayout();
    }

    private int quarter(double y) {
        return (int) Math.max(0, Math.min(PaintedWeek.QUARTERS - 1, (y - top()) / quarterHeight()));
    }

    private double left() {
        return em() * 3;
    }

    private double top() {
        return em() * 2;
    }

    private double columnWidth() {
        return (getWidth() - left() - 4) / 7;
    }

    private double quarterHeight() {
        return (getHeight() - top() - 10) / PaintedWeek.QUARTERS;
    }

    /** A reader is told at which quarter of the week the caret stands. */
    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        return switch (attribute) {
            case VALUE -> (double) day.ordinal() * PaintedWeek.QUARTERS + from;
            case MIN_VALUE -> 0.0;
            case MAX_VALUE -> 7.0 * PaintedWeek.QUARTERS - 1;
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    protected void paint(GraphicsContext pen) {
        PaintedWeek week = model.shownProperty().get().week();
        for (DayOfWeek each : DayOfWeek.values()) {
            ground(pen, each);
            night(pen, each);
            column(pen, week, each);
        }
        hours(pen);
        selection(pen);
        setAccessibleText(WindowWords.say(
                "house.cell.spoken",
                day.getDisplayName(TextStyle.FULL, model.units().locale()),
                PaintedWeek.time(from).toString(),
                clock(until),
                WindowWords.say(week.isFree(day, from) ? "house.free" : "house.away")));
    }

    private double columnX(DayOfWeek each) {
        return left() + each.ordinal() * columnWidth();
    }

    /** Hours away hatched, so that colour never speaks alone. */
    private void ground(GraphicsContext pen, DayOfWeek each) {
        double x = columnX(each);
        double width = columnWidth() - 4;
        double height = PaintedWeek.QUARTERS * quarterHeight();
        pen.setFill(inks().of(Ink.SURFACE));
        pen.fillRect(x, top(), width, height);
        pen.save();
        pen.beginPath();
        pen.rect(x, top(), width, height);
        pen.clip();
        pen.setStroke(inks().of(Ink.HATCH, 0.6));
        pen.setLineWidth(1);
        for (double y = top(); y < top() + height + width; y += 9) pen.strokeLine(x, y, x + width, y - width);
        pen.restore();
    }

    /** The night, plain, and whether somebody would get up in it. */
    private void night(GraphicsContext pen, DayOfWeek each) {
        NightActs nights = model.shownProperty().get().house().nights();
        double from = nights.from().toSecondOfDay() / 900.0;
        double until = nights.until().toSecondOfDay() / 900.0;
        if (until > from) night(pen, each, from, until);
        else {
            night(pen, each, 0, until);
            night(pen, each, from, PaintedWeek.QUARTERS);
        }
    }

    private void night(GraphicsContext pen, DayOfWeek each, double from, double until) {
        boolean must = model.shownProperty().get().house().nights().most() > 0;
        double width = columnWidth() - 4;
        double y = top() + from * quarterHeight();
        double height = (until - from) * quarterHeight();
        pen.setFill(inks().of(Ink.NIGHT));
        pen.fillRect(columnX(each), y, width, height);
        pen.setStroke(inks().of(Ink.EDGE));
        pen.setLineDashes(4, 3);
        pen.setLineWidth(1);
        if (must) pen.strokeRect(columnX(each) + 2.5, y + 2.5, width - 5, height - 5);
        pen.setLineDashes();
        if (height < em() * 2.4 || width < em() * 3.6) return;
        pen.setFont(plain(0.86));
        pen.setFill(inks().of(Ink.INK_3));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        String words = WindowWords.say(must ? "house.night-must" : "house.night-asleep");
        pen.fillText(words, columnX(each) + width / 2, y + height / 2, width - 4);
    }

    private void column(GraphicsContext pen, PaintedWeek week, DayOfWeek each) {
        double x = columnX(each);
        double width = columnWidth() - 4;
        pen.setFont(each.getValue() > 5 ? bold(0.93) : plain(0.93));
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        pen.setFill(inks().of(Ink.INK));
        boolean roomy = width > em() * 2.4;
        TextStyle style = roomy ? TextStyle.SHORT : TextStyle.NARROW;
        pen.fillText(each.getDisplayName(style, model.units().locale()), x + width / 2, top() / 2);
        boolean timed = width > em() * 2.9;
        for (LocalHours free : week.hours(each)) {
            double y = top() + free.fromInclusive().toSecondOfDay() / 900.0 * quarterHeight();
            boolean midnight = free.untilExclusive().equals(LocalTime.MIDNIGHT);
            double quarters = (midnight ? 86400 : free.untilExclusive().toSecondOfDay()) / 900.0;
            double height = top() + quarters * quarterHeight() - y;
            pen.setFill(inks().of(Ink.DAMSON_SOFT));
            pen.fillRoundRect(x, y, width, height, 6, 6);
            pen.setStroke(inks().of(Ink.DAMSON));
            pen.setLineWidth(1.2);
            pen.strokeRoundRect(x + 0.5, y + 0.5, width - 1, height - 1, 6, 6);
            pen.setFill(inks().of(Ink.DAMSON));
            pen.fillRect(x, y + 2, 4, height - 4);
            if (timed && height > em() * 2.4) {
                pen.setFill(inks().of(Ink.INK));
                double inset = em() * 0.75;
                pen.fillText(free.fromInclusive().toString(), x + width / 2, y + inset);
                pen.fillText(midnight ? "24:00" : free.untilExclusive().toString(), x + width / 2, y + height - inset);
            } else if (timed && height > em()) {
                pen.setFill(inks().of(Ink.INK));
                pen.fillText(free.fromInclusive().toString(), x + width / 2, y + height / 2);
            }
        }
    }

    private void hours(GraphicsContext pen) {
        pen.setFont(plain(0.86));
        pen.setTextAlign(TextAlignment.RIGHT);
        pen.setFill(inks().of(Ink.INK_3));
        for (int hour = 0; hour <= 24; hour += 3) {
            double y = top() + hour * 4 * quarterHeight();
            pen.fillText(String.format(Locale.ROOT, "%02d", hour), left() - 6, y);
            pen.setStroke(inks().of(Ink.LINE));
            pen.setLineWidth(1);
            pen.setLineDashes(1, 4);
            pen.strokeLine(left(), Math.floor(y) + 0.5, getWidth(), Math.floor(y) + 0.5);
            pen.setLineDashes();
        }
    }

    private void selection(GraphicsContext pen) {
        if (!isFocused()) return;
        double x = left() + day.ordinal() * columnWidth() - 2;
        double y = top() + from * quarterHeight();
        pen.setStroke(inks().of(Ink.INK));
        pen.setLineWidth(2);
        pen.strokeRoundRect(x, y, columnWidth(), (until - from) * quarterHeight(), 6, 6);
    }

    private static String clock(int quarter) {
        return quarter == PaintedWeek.QUARTERS
                ? "24:00"
                : PaintedWeek.time(quarter).toString();
    }
}
