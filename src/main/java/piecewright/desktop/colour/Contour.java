package piecewright.desktop.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.desktop.colour.ColourField.Point;

/** Pairs of hours and temperature that give one colour, from the shortest on. Colour rises with both, so there is one. */
record Contour(double colourEbc, List<Point> points) {
    private static final int STEPS = 60;

    Contour {
        points = List.copyOf(points);
    }

    static Contour of(ColourField field, double colourEbc) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= STEPS; i++) {
            double hours = field.leastHours() + (field.mostHours() - field.leastHours()) * i / STEPS;
            OptionalDouble heatC = field.heatC(colourEbc, hours);
            if (heatC.isPresent()) points.add(new Point(hours, heatC.getAsDouble()));
        }
        return new Contour(colourEbc, points);
    }

    /** Round figures on a scale, between the palest and the darkest of a field. */
    static List<Double> levels(double least, double most) {
        List<Double> levels = new ArrayList<>();
        double[] steps = {0.2, 0.5, 1, 2, 5, 10, 20, 50, 100};
        for (double step : steps) {
            if ((most - least) / step > 8) continue;
            for (double level = Math.ceil(least / step) * step; level <= most; level += step) {
                levels.add(Math.round(level * 10) / 10.0);
            }
            break;
        }
        return levels;
    }
}
