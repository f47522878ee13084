package piecewright.desktop.timeline;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import piecewright.plan.Plan;

/** One figure along time, in time order; between its points straight lines. */
public record Trace(List<Point> points) {
    public Trace {
        points = List.copyOf(points);
    }

    /** One figure at one instant. */
    public record Point(Instant at, double figure) {}

    public static Trace of(List<Plan.Sample> course, ToDoubleFunction<Plan.Sample> figure) {
        List<Point> points = new ArrayList<>(course.size());
        for (Plan.Sample sample : course) points.add(new Point(sample.at(), figure.applyAsDouble(sample)));
        return new Trace(points);
    }

    public static Trace none() {
        return new Trace(List.of());
    }

    /** The figure at an instant; empty outside the points. */
    public OptionalDouble at(Instant at) {
        int after = firstAfter(at);
        if (after == 0) return OptionalDouble.empty();
        Point before = points.get(after - 1);
        if (after == points.size()) {
            return before.at().equals(at) ? OptionalDouble.of(before.figure()) : OptionalDouble.empty();
        }
        Point next = points.get(after);
        double whole = Duration.between(before.at(), next.at()).toMillis();
        double share = Duration.between(before.at(), at).toMillis() / whole;
        return OptionalDouble.of(before.figure() + share * (next.figure() - before.figure()));
    }

    /** Index of the first point after an instant; the number of points when there is none. */
    public int firstAfter(Instant at) {
        int low = 0;
        int high = points.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (points.get(middle).at().isAfter(at)) high = middle;
            else low = middle + 1;
        }
        return low;
    }
}
