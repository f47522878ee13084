package piecewright.chart;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import piecewright.chart.Drawing.Letters;
import piecewright.chart.Drawing.Spot;
import piecewright.chart.Drawing.Stroke;
import piecewright.colour.ColourBand;
import piecewright.colour.Cure.Cured;
import piecewright.colour.CureMap;
import piecewright.colour.CureMap.Cell;
import piecewright.colour.CureMap.Forbidden;
import piecewright.colour.Swatch;
import piecewright.text.DisplayUnits;
import piecewright.text.Phrases;
import piecewright.text.QuantityFormat;

/**
 * Which colours the cures of some styles give, as one SVG picture: hours of curing across, temperature up, every cell
 * painted as 1 cm of wort and told in figures. What may not be is crossed out; what comes near the wish is framed.
 */
public final class ColourChart {
    /** Stands in every picture of ours and tells it from others. */
    public static final String OURS = Drawing.OURS;

    private static final double WIDTH = 900;
    private static final double PANEL_WIDTH = 440;
    private static final double TOP_Y = 46;
    private static final double CELL_WIDTH = 58;
    private static final double CELL_HEIGHT = 26;
    private static final double AXIS_WIDTH = 72;
    private static final double DARK_LIGHTNESS = 110;

    private final double wantedEbc;
    private final DisplayUnits units;
    private final QuantityFormat quantities;
    private final Drawing pen = new Drawing(new Markup());

    private ColourChart(double wantedEbc, DisplayUnits units) {
        this.wantedEbc = wantedEbc;
        this.units = units;
        this.quantities = new QuantityFormat(units);
    }

    /** One style and what its cures give. */
    public record Panel(String style, CureMap map) {
        public Panel {
            Objects.requireNonNull(style);
            Objects.requireNonNull(map);
        }

        private List<Double> temperaturesC() {
            return List.copyOf(new TreeSet<>(
                    map.cells().stream().map(cell -> cell.cured().cureC()).toList()));
        }

        private List<Double> hours() {
            return List.copyOf(new TreeSet<>(
                    map.cells().stream().map(cell -> cell.cured().cureHours()).toList()));
        }

        private double height() {
            return 60 + temperaturesC().size() * CELL_HEIGHT;
        }
    }

    /** The picture for a wished colour, EBC; ends with a line end. */
    public static String of(List<Panel> panels, double wantedEbc, DisplayUnits units) {
        ColourChart chart = new ColourChart(wantedEbc, units);
        chart.draw(panels);
        return chart.pen.markup().written() + "\n";
    }

    private void draw(List<Panel> panels) {
        double tallest = panels.stream().mapToDouble(Panel::height).max().orElse(0);
        double bottomY = TOP_Y + tallest * ((panels.size() + 1) / 2);
        String title = Phrases.say(
                "chart.colour.title",
                quantities.colour(wantedEbc),
                units.colour().symbol());
        pen.begin(WIDTH, bottomY + 40, title, Phrases.say("chart.colour.description", Integer.toString(panels.size())));
        pen.words(4, 18, title, Letters.PLAIN.sized(14).bold());
        for (int i = 0; i < panels.size(); i++) {
            panel(panels.get(i), new Spot(i % 2 * (PANEL_WIDTH + 20), TOP_Y + i / 2 * tallest));
        }
        legend(bottomY + 14);
        pen.end();
    }

    private void panel(Panel panel, Spot corner) {
        pen.words(
                corner.x() + 4,
                corner.y() + 12,
                panel.style(),
                Letters.PLAIN.sized(13).bold());
        List<Double> temperaturesC = panel.temperaturesC();
        List<Double> hours = panel.hours();
        double leftX = corner.x() + AXIS_WIDTH;
        double bottomY = corner.y() + 22 + temperaturesC.size() * CELL_HEIGHT;
        Optional<Cell> nearest = nearest(panel.map());
        for (Cell cell : panel.map().cells()) {
            double x = leftX + hours.indexOf(cell.cured().cureHours()) * CELL_WIDTH;
            double y = bottomY - (temperaturesC.indexOf(cell.cured().cureC()) + 1) * CELL_HEIGHT;
            cell(cell, new Spot(x, y), nearest.filter(cell::equals).isPresent());
        }
        axes(temperaturesC, hours, new Spot(leftX, bottomY));
    }

    private void axes(List<Double> temperaturesC, List<Double> hours, Spot corner) {
        for (int i = 0; i < temperaturesC.size(); i++) {
            String words = quantities.temperature(temperaturesC.get(i));
            double y = corner.y() - i * CELL_HEIGHT - CELL_HEIGHT / 2 + 4;
            pen.words(corner.x() - 6, y, words, Frame.TICK.ending());
        }
        for (int i = 0; i < hours.size(); i++) {
            String words = Phrases.say("chart.colour.hours", Long.toString(Math.round(hours.get(i))));
            pen.words(corner.x() + (i + 0.5) * CELL_WIDTH, corner.y() + 15, words, Frame.TICK.centred());
        }
    }

    private Optional<Cell> nearest(CureMap map) {
        return map.cells().stream()
                .filter(cell -> cell.forbidden().isEmpty())
                .filter(cell -> near(cell.cured()))
                .min(Comparator.comparingDouble(
                        cell -> Math.abs(Math.log(cell.cured().colourEbc() / wantedEbc))));
    }

    private boolean near(Cured cured) {
        ColourBand band = ColourBand.ofKilned(cured.colourEbc());
        return wantedEbc >= band.lowEbc() && wantedEbc <= band.highEbc();
    }

    private void cell(Cell cell, Spot corner, boolean nearest) {
        Swatch swatch = Swatch.ofMalt(cell.cured().colourEbc());
        boolean dark = 0.3 * swatch.red() + 0.6 * swatch.green() + 0.1 * swatch.blue() < DARK_LIGHTNESS;
        String ink = dark ? Ink.PAPER : Ink.TEXT;
        pen.box(corner.x(), corner.y(), CELL_WIDTH, CELL_HEIGHT, "#" + swatch.hex(), Ink.EDGE);
        cross(cell, corner, ink);
        if (near(cell.cured()) && cell.forbidden().isEmpty()) {
            double width = nearest ? 3.5 : 1.5;
            String path = "M" + Drawing.at(new Spot(corner.x() + 2, corner.y() + 2)) + "h" + (CELL_WIDTH - 4) + "v"
                    + (CELL_HEIGHT - 4) + "h" + (4 - CELL_WIDTH) + "Z";
            pen.path(path, Stroke.of(ink, width));
        }
        Letters letters = Letters.PLAIN.sized(11).in(ink).centred();
        String figure = quantities.colour(cell.cured().colourEbc()).split(" ")[0];
        pen.words(corner.x() + CELL_WIDTH / 2 + 7, corner.y() + 17, figure, nearest ? letters.bold() : letters);
    }

    /** One stroke for each reason why not, so that reasons can be told apart without colour. */
    private void cross(Cell cell, Spot corner, String ink) {
        double leftX = corner.x() + 4;
        double rightX = leftX + 13;
        double topY = corner.y() + 6;
        double bottomY = corner.y() + CELL_HEIGHT - 6;
        Stroke thin = Stroke.of(ink, 1.2);
        if (cell.forbidden().contains(Forbidden.NOT_THE_STYLE)) {
            pen.line(new Spot(leftX, bottomY), new Spot(rightX, topY), thin);
        }
        if (cell.forbidden().contains(Forbidden.HEATER_TOO_COOL)) {
            pen.line(new Spot(leftX, topY), new Spot(rightX, bottomY), thin);
        }
        if (cell.forbidden().contains(Forbidden.STAYS_TOO_MOIST)) {
            pen.line(new Spot(leftX, bottomY + 3), new Spot(rightX, bottomY + 3), thin.dashed("3 3"));
        }
    }

    private void legend(double y) {
        double x = sign(8, y, "M5 3L18 -10", Stroke.of(Ink.TEXT, 1.2), "chart.colour.not-the-style");
        x = sign(x, y, "M5 -10L18 3", Stroke.of(Ink.TEXT, 1.2), "chart.colour.heater-too-cool");
        x = sign(x, y, "M5 0L18 0", Stroke.of(Ink.TEXT, 1.2).dashed("3 3"), "chart.colour.stays-too-moist");
        sign(x, y, "M0 -9h24v13h-24Z", Stroke.of(Ink.TEXT, 3.5), "chart.colour.nearest");
        sign(8, y + 18, "M0 -9h24v13h-24Z", Stroke.of(Ink.TEXT, 1.5), "chart.colour.near");
    }

    private double sign(double x, double y, String path, Stroke stroke, String key) {
        pen.markup().open("g", "transform", "translate(" + Drawing.at(new Spot(x, y)) + ")");
        pen.path(path, stroke);
        pen.markup().close();
        String words = Phrases.say(key);
        pen.words(x + 30, y + 2, words, Letters.PLAIN.sized(11));
        return x + 30 + words.length() * 6 + 16;
    }
}
