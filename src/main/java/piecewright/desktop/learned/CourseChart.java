package piecewright.desktop.learned;

import java.util.List;
import java.util.Locale;
import javafx.geometry.VPos;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.text.TextAlignment;
import piecewright.desktop.learned.Compared.Course;
import piecewright.desktop.learned.Compared.Spot;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.text.WindowWords;

/** Moisture of two pieces laid over each other, both from their first act on: the first full, the second dashed. */
final class CourseChart extends Painted {
    private static final double HEIGHT_EM = 12;
    private static final double MOST_PERCENT = 50;

    private final List<Course> courses;

    CourseChart(List<Course> courses) {
        super("compared-courses");
        this.courses = courses;
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(WindowWords.say("learned.compare.courses"));
        setMinHeight(170);
        setMaxWidth(Double.MAX_VALUE);
    }

    @Override
    protected void textSized() {
        setMinHeight(HEIGHT_EM * em());
        requestLayout();
    }

    private double left() {
        return 3 * em();
    }

    private double bottom() {
        return getHeight() - 1.6 * em();
    }

    private double mostHours() {
        return courses.stream()
                .flatMap(course -> course.spots().stream())
                .mapToDouble(Spot::hours)
                .max()
                .orElse(1);
    }

    private double x(double hours) {
        return left() + (getWidth() - left() - em()) * hours / mostHours();
    }

    private double y(double percent) {
        return bottom() - (bottom() - 0.6 * em()) * percent / MOST_PERCENT;
    }

    @Override
    protected void paint(GraphicsContext pen) {
        pen.setFont(plain(0.86));
        pen.setTextBaseline(VPos.CENTER);
        for (int percent = 0; percent <= MOST_PERCENT; percent += 10) {
            pen.setStroke(inks().of(Ink.GRID));
            pen.setLineWidth(1);
            double y = Math.floor(y(percent)) + 0.5;
            pen.strokeLine(left(), y, getWidth(), y);
            pen.setFill(inks().of(Ink.INK_3));
            pen.setTextAlign(TextAlignment.RIGHT);
            pen.fillText(String.format(Locale.ROOT, "%d %%", percent), left() - 6, y);
        }
        pen.setTextAlign(TextAlignment.CENTER);
        for (int day = 1; day * 24 <= mostHours(); day++) {
            pen.fillText(
                    WindowWords.say("learned.compare.day", Integer.toString(day)), x(24 * day), bottom() + 0.8 * em());
        }
        for (int i = 0; i < courses.size(); i++) {
            pen.setStroke(inks().of(i == 0 ? Ink.WATER : Ink.RASPBERRY));
            pen.setLineWidth(2);
            if (i > 0) pen.setLineDashes(6, 4);
            line(pen, courses.get(i));
        }
        pen.setLineDashes();
    }

    private void line(GraphicsContext pen, Course course) {
        pen.beginPath();
        for (int i = 0; i < course.spots().size(); i++) {
            Spot spot = course.spots().get(i);
            if (i == 0) pen.moveTo(x(spot.hours()), y(spot.percent()));
            else pen.lineTo(x(spot.hours()), y(spot.percent()));
        }
        pen.stroke();
    }
}
