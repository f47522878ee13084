package piecewright.desktop.colour;

import java.util.Locale;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelWriter;
import javafx.scene.image.WritableImage;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.paint.Color;
import javafx.scene.text.TextAlignment;
import piecewright.colour.ColourBand;
import piecewright.desktop.colour.ColourField.Barred;
import piecewright.desktop.colour.ColourField.Point;
import piecewright.desktop.colour.ColourViewModel.Shown;
import piecewright.desktop.paint.Ink;
import piecewright.desktop.paint.Painted;
import piecewright.text.ColourUnit;
import piecewright.text.WindowWords;

/** The map: hours across, temperature up, every point painted as one centimetre of its wort. */
final class ColourMap extends Painted {
    private static final Color ON_WORT = Color.rgb(22, 33, 31);
    private static final int COARSE = 4;
    private static final double LEAST_EM = 22;

    private final ColourViewModel model;

    ColourMap(ColourViewModel model) {
        super("colour-map");
        this.model = model;
        getStyleClass().add("colour-map");
        setFocusTraversable(true);
        setAccessibleRole(AccessibleRole.SLIDER);
        setMinSize(0, 300);
        setPrefSize(800, 420);
        model.shownProperty().addListener((shown, before, now) -> requestLayout());
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::pointed);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::pointed);
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
    }

    @Override
    protected void textSized() {
        setMinHeight(LEAST_EM * em());
        requestLayout();
    }

    private void pressed(KeyEvent event) {
        KeyCode code = event.getCode();
        boolean along = event.isShiftDown();
        double stepHours = model.stepHours();
        if (code == KeyCode.LEFT && along) model.slide(-stepHours);
        else if (code == KeyCode.RIGHT && along) model.slide(stepHours);
        else if (code == KeyCode.LEFT) model.nudge(-stepHours, 0);
        else if (code == KeyCode.RIGHT) model.nudge(stepHours, 0);
        else if (code == KeyCode.UP) model.nudge(0, 1);
        else if (code == KeyCode.DOWN) model.nudge(0, -1);
        else return;
        event.consume();
    }

    private void pointed(MouseEvent event) {
        requestFocus();
        model.shownProperty()
                .get()
                .ifPresent(shown -> model.choose(frame(shown.field()).point(event.getX(), event.getY())));
    }

    private MapFrame frame(ColourField field) {
        double em = em();
        return new MapFrame(field, 5 * em, 1.2 * em, getWidth() - 7.5 * em, getHeight() - 3.6 * em);
    }

    /** A reader is told the hours of the chosen cure. */
    @Override
    public Object queryAccessibleAttribute(AccessibleAttribute attribute, Object... parameters) {
        Optional<Shown> shown = model.shownProperty().get();
        return switch (attribute) {
            case VALUE -> shown.flatMap(Shown::point).map(Point::hours).orElse(0.0);
            case MIN_VALUE -> shown.map(each -> each.field().leastHours()).orElse(0.0);
            case MAX_VALUE -> shown.map(each -> each.field().mostHours()).orElse(1.0);
            default -> super.queryAccessibleAttribute(attribute, parameters);
        };
    }

    @Override
    protected void paint(GraphicsContext pen) {
        setAccessibleText(model.verdict());
        model.shownProperty().get().ifPresent(shown -> paint(pen, frame(shown.field()), shown));
    }

    private void paint(GraphicsContext pen, MapFrame frame, Shown shown) {
        worts(pen, frame, shown.sought().colourEbc());
        if (!frame.field().isRoast()) enzymes(pen, frame);
        bars(pen, frame);
        contours(pen, frame, shown.sought().colourEbc());
        usual(pen, frame);
        axes(pen, frame);
        chosen(pen, frame, shown);
        new BarredLabels(model, inks(), semibold(0.86)).paint(pen, frame);
        shown.point().ifPresent(at -> handle(pen, frame, at));
    }

    /** Pixels of wort, paler where the colour sought may come out: a blurred edge around its curve. */
    private static void worts(GraphicsContext pen, MapFrame frame, double soughtEbc) {
        int columns = (int) Math.max(2, frame.width() / COARSE);
        int rows = (int) Math.max(2, frame.height() / COARSE);
        WritableImage image = new WritableImage(columns, rows);
        PixelWriter pixels = image.getPixelWriter();
        WortTable worts = WortTable.of(frame.field());
        double spread = Math.log(frame.field().band(soughtEbc).highEbc() / soughtEbc);
        for (int row = 0; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                Point at = frame.point(
                        frame.left() + (column + 0.5) * frame.width() / columns,
                        frame.top() + (row + 0.5) * frame.height() / rows);
                double colourEbc = frame.field().colourEbc(at);
                double away = Math.log(colourEbc / soughtEbc) / spread;
                double veil = 0.6 * Math.exp(-2 * away * away);
                pixels.setColor(column, row, worts.of(colourEbc).interpolate(Color.WHITE, veil));
            }
        }
        pen.setImageSmoothing(true);
        pen.drawImage(image, frame.left(), frame.top(), frame.width(), frame.height());
    }

    /** Lines slope more densely the fewer enzymes are left. */
    private static void enzymes(GraphicsContext pen, MapFrame frame) {
        pen.setStroke(ON_WORT.deriveColor(0, 1, 1, 0.45));
        pen.setLineWidth(0.8);
        pen.setLineDashes();
        double[] below = {0.5, 0.25, 0.1};
        for (int level = 0; level < below.length; level++) {
            double pitch = 12;
            double offset = level * 4;
            for (double x = frame.left() - frame.height() + offset; x < frame.right(); x += pitch) {
                hatched(pen, frame, x, below[level]);
            }
        }
    }

    private static void hatched(GraphicsContext pen, MapFrame frame, double from, double belowFraction) {
        double step = 6;
        for (double along = 0; along < frame.height(); along += step) {
            double x = from + along;
            double y = frame.bottom() - along;
            if (x < frame.left() || x + step > frame.right() || y - step < frame.top()) continue;
            if (frame.field().enzymeFraction(frame.point(x, y)) < belowFraction) {
                pen.strokeLine(x, y, x + step, y - step);
            }
        }
    }

    private void contours(GraphicsContext pen, MapFrame frame, double soughtEbc) {
        ColourField field = frame.field();
        ColourUnit unit = model.units().colour();
        double least = unit.ofEbc(field.colourEbc(new Point(field.leastHours(), field.leastC())));
        double most = unit.ofEbc(field.colourEbc(new Point(field.mostHours(), field.mostC())));
        pen.setFont(semibold(0.86));
        int number = 0;
        for (double level : Contour.levels(least, most)) {
            double levelEbc = unit.ebcOf(level);
            if (Math.abs(levelEbc / soughtEbc - 1) < 0.04) continue;
            Contour contour = Contour.of(field, levelEbc);
            pen.setStroke(ON_WORT);
            pen.setLineWidth(1);
            stroke(pen, frame, contour);
            double share = 0.3 + 0.13 * (number++ % 4);
            label(pen, frame, contour, share, String.format(Locale.ROOT, level < 20 ? "%.1f" : "%.0f", level));
        }
    }

    private static void stroke(GraphicsContext pen, MapFrame frame, Contour contour) {
        if (contour.points().size() < 2) return;
        pen.beginPath();
        Point first = contour.points().get(0);
        pen.moveTo(frame.x(first.hours()), frame.y(first.heatC()));
        for (Point each : contour.points()) pen.lineTo(frame.x(each.hours()), frame.y(each.heatC()));
        pen.stroke();
    }

    private static void label(GraphicsContext pen, MapFrame frame, Contour contour, double share, String words) {
        if (contour.points().size() < 8) return;
        Point at = contour.points().get((int) (share * (contour.points().size() - 1)));
        tag(pen, frame.x(at.hours()), frame.y(at.heatC()), words);
    }

    private static void tag(GraphicsContext pen, double x, double y, String words) {
        double width = words.length() * pen.getFont().getSize() * 0.56 + 10;
        double height = pen.getFont().getSize() * 1.5;
        pen.setFill(Color.WHITE);
        pen.fillRoundRect(x - width / 2, y - height / 2, width, height, 4, 4);
        pen.setFill(ON_WORT);
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.CENTER);
        pen.fillText(words, x, y);
    }

    /** The curve of the colour sought, and the edges of its band. */
    private void chosen(GraphicsContext pen, MapFrame frame, Shown shown) {
        double soughtEbc = shown.sought().colourEbc();
        ColourBand band = frame.field().band(soughtEbc);
        pen.setStroke(ON_WORT);
        pen.setLineWidth(1.4);
        pen.setLineDashes(2, 4);
        stroke(pen, frame, Contour.of(frame.field(), band.lowEbc()));
        stroke(pen, frame, Contour.of(frame.field(), band.highEbc()));
        pen.setLineDashes();
        pen.setLineWidth(3);
        Contour sought = Contour.of(frame.field(), soughtEbc);
        stroke(pen, frame, sought);
        pen.setFont(bold(1));
        label(pen, frame, sought, 0.12, model.quantities().colour(soughtEbc));
    }

    /** What is usual for the style, outlined and named. */
    private void usual(GraphicsContext pen, MapFrame frame) {
        ColourField.Usual usual = frame.field().usual();
        double left = frame.x(Math.max(frame.field().leastHours(), usual.leastHours()));
        double right = frame.x(Math.min(frame.field().mostHours(), usual.mostHours()));
        double top = frame.y(usual.hottestC());
        double bottom = frame.y(usual.coolestC());
        pen.setStroke(ON_WORT);
        pen.setLineWidth(1.2);
        pen.setLineDashes(7, 4);
        pen.strokeRoundRect(left, top, Math.max(2, right - left), bottom - top, 8, 8);
        pen.setLineDashes();
        pen.setFont(plain(0.86));
        pen.setFill(ON_WORT);
        pen.setTextAlign(TextAlignment.LEFT);
        pen.setTextBaseline(VPos.BOTTOM);
        String words = WindowWords.say("colour.usual", frame.field().style().title());
        pen.fillText(words, Math.min(left, frame.right() - 11 * em()) + 4, bottom - 4);
    }

    private void bars(GraphicsContext pen, MapFrame frame) {
        pen.setLineWidth(1);
        pen.setLineDashes();
        double step = 8;
        for (double y = frame.top(); y < frame.bottom(); y += step) {
            for (double x = frame.left(); x < frame.right(); x += step) {
                Optional<Barred> barred = frame.field().barred(frame.point(x + step / 2, y + step / 2));
                if (barred.isEmpty() || barred.get() == Barred.NOT_THE_STYLE) continue;
                pen.setFill(inks().of(Ink.SUNKEN, 0.82));
                double width = Math.min(step, frame.right() - x);
                double height = Math.min(step, frame.bottom() - y);
                pen.fillRect(x, y, width, height);
                pen.setStroke(inks().of(Ink.EDGE));
                pen.strokeLine(x, y, x + width, y + height);
                pen.strokeLine(x + width, y, x, y + height);
            }
        }
    }

    private void axes(GraphicsContext pen, MapFrame frame) {
        pen.setStroke(inks().of(Ink.EDGE));
        pen.setLineWidth(1);
        pen.strokeRect(frame.left() + 0.5, frame.top() + 0.5, frame.width(), frame.height());
        pen.setFont(plain(0.86));
        pen.setFill(inks().of(Ink.INK_2));
        pen.setTextBaseline(VPos.CENTER);
        pen.setTextAlign(TextAlignment.RIGHT);
        double step = frame.height() / (frame.field().mostC() - frame.field().leastC()) > 12 ? 5 : 10;
        for (double c = Math.ceil(frame.field().leastC() / step) * step;
                c <= frame.field().mostC();
                c += step) {
            pen.fillText(model.quantities().temperature(c), frame.left() - 6, frame.y(c));
        }
        pen.setTextAlign(TextAlignment.CENTER);
        pen.setTextBaseline(VPos.TOP);
        double eachHours = tickHours(frame);
        for (double hours = Math.ceil(frame.field().leastHours() / eachHours - 1e-9) * eachHours;
                hours <= frame.field().mostHours() + 1e-9;
                hours += eachHours) {
            pen.fillText(model.hours(hours), frame.x(hours), frame.bottom() + 6);
        }
    }

    /** Time between two marks of the axis, so that their words keep apart. */
    private double tickHours(MapFrame frame) {
        double neededPixels = 5 * em();
        double wholeHours = frame.field().mostHours() - frame.field().leastHours();
        for (double minutes : new double[] {1, 2, 5, 10, 15, 30}) {
            if (minutes / 60 / wholeHours * frame.width() >= neededPixels) return minutes / 60;
        }
        return 1 / wholeHours * frame.width() >= neededPixels ? 1 : 2;
    }

    private void handle(GraphicsContext pen, MapFrame frame, Point at) {
        double x = frame.x(at.hours());
        double y = frame.y(at.heatC());
        pen.setStroke(inks().of(Ink.DAMSON));
        pen.setLineWidth(1.5);
        pen.setLineDashes(4, 3);
        pen.strokeLine(frame.left(), y, x, y);
        pen.strokeLine(x, y, x, frame.bottom());
        pen.setLineDashes();
        Color wort = WortTable.of(frame.field()).of(frame.field().colourEbc(at));
        pen.setFill(Color.WHITE);
        pen.fillOval(x - 14, y - 14, 28, 28);
        pen.setFill(wort);
        pen.fillOval(x - 9, y - 9, 18, 18);
        pen.setStroke(ON_WORT);
        pen.strokeOval(x - 9, y - 9, 18, 18);
        pen.setStroke(inks().of(Ink.DAMSON));
        pen.setLineWidth(3);
        pen.strokeOval(x - 13, y - 13, 26, 26);
    }
}
