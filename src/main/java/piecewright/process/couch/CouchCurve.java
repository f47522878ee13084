package piecewright.process.couch;

import java.util.List;
import java.util.OptionalDouble;
import piecewright.process.PieceState;

/** The heating curve of a couch and the moments on it, found on straight lines between its points. */
public final class CouchCurve {
    private final List<Point> points;

    /** One moment of the curve. */
    public record Point(double atHours, double pileC, double indexHours) {}

    /** points rise in time, at least one. */
    public CouchCurve(List<Point> points) {
        this.points = List.copyOf(points);
        if (this.points.isEmpty()) throw new IllegalArgumentException("points must not be empty");
    }

    /** The curve of a piece packed at fromHours and followed to untilHours. */
    public static CouchCurve of(HotCouch couch, PieceState packed, double fromHours, double untilHours) {
        List<Point> points = new java.util.ArrayList<>();
        couch.run(
                packed,
                fromHours,
                untilHours,
                (atHours, state) -> points.add(
                        new Point(atHours, state.grainC(), state.couch().indexHours())));
        return new CouchCurve(points);
    }

    /** The same curve up to an hour, not before its first point. */
    public CouchCurve until(double atHours) {
        return new CouchCurve(points.stream()
                .filter(point -> point.atHours <= Math.max(atHours, points.get(0).atHours))
                .toList());
    }

    public List<Point> points() {
        return points;
    }

    /** The hottest point. */
    public Point peak() {
        Point peak = points.get(0);
        for (Point point : points) if (point.pileC > peak.pileC) peak = point;
        return peak;
    }

    /** When the pile first rises to a temperature, hours; empty when it never does. */
    public OptionalDouble risesToHours(double pileC) {
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (before.pileC < pileC && after.pileC >= pileC) return OptionalDouble.of(crossing(before, after, pileC));
        }
        return OptionalDouble.empty();
    }

    /** When, after the peak, the pile falls through a temperature, hours; empty when it does not. */
    public OptionalDouble fallsToHours(double pileC) {
        for (int i = points.indexOf(peak()) + 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (before.pileC >= pileC && after.pileC < pileC) return OptionalDouble.of(crossing(before, after, pileC));
        }
        return OptionalDouble.empty();
    }

    /** When the couch index reaches a figure, hours; empty when it does not. */
    public OptionalDouble reachesIndexHours(double indexHours) {
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (before.indexHours < indexHours && after.indexHours >= indexHours) {
                double share = (indexHours - before.indexHours) / (after.indexHours - before.indexHours);
                return OptionalDouble.of(before.atHours + share * (after.atHours - before.atHours));
            }
        }
        return OptionalDouble.empty();
    }

    /** Hours spent at or above a temperature. */
    public double hoursAbove(double pileC) {
        double sumHours = 0;
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            double low = Math.min(before.pileC, after.pileC);
            double high = Math.max(before.pileC, after.pileC);
            double share = low >= pileC ? 1 : high < pileC ? 0 : (high - pileC) / (high - low);
            sumHours += share * (after.atHours - before.atHours);
        }
        return sumHours;
    }

    /** Temperature at a moment, °C, linear between points; the ends hold beyond. */
    public double pileC(double atHours) {
        if (atHours <= points.get(0).atHours) return points.get(0).pileC;
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point after = points.get(i);
            if (after.atHours >= atHours) {
                double share = (atHours - before.atHours) / (after.atHours - before.atHours);
                return before.pileC + share * (after.pileC - before.pileC);
            }
        }
        return points.get(points.size() - 1).pileC;
    }

    private static double crossing(Point before, Point after, double pileC) {
        return before.atHours
                + (after.atHours - before.atHours) * (pileC - before.pileC) / (after.pileC - before.pileC);
    }
}
