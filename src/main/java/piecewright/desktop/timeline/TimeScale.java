package piecewright.desktop.timeline;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * Maps instants to pixels from the left edge and back. Zooming and panning give a new scale.
 *
 * @param leftmost the instant at pixel 0
 * @param pixelsPerHour more than 0
 */
public record TimeScale(Instant leftmost, double pixelsPerHour) {
    private static final double LEAST_PIXELS_PER_HOUR = 0.25;
    private static final double MOST_PIXELS_PER_HOUR = 240;

    public TimeScale {
        Objects.requireNonNull(leftmost);
        if (!(pixelsPerHour > 0)) {
            throw new IllegalArgumentException("pixelsPerHour must be above 0: " + pixelsPerHour);
        }
    }

    /** The scale on which [from, until] fills that width. */
    public static TimeScale fitting(Instant from, Instant until, double widthPixels) {
        double hours = Math.max(1, hours(Duration.between(from, until)));
        return new TimeScale(from, bounded(Math.max(1, widthPixels) / hours));
    }

    public double x(Instant at) {
        return hours(Duration.between(leftmost, at)) * pixelsPerHour;
    }

    /** The instant at that pixel, to the second. */
    public Instant at(double x) {
        return leftmost.plusSeconds(Math.round(x / pixelsPerHour * 3600));
    }

    /** Zoomed by a factor so that the instant at x stays at x. */
    public TimeScale zoomed(double factor, double x) {
        double zoomed = bounded(pixelsPerHour * factor);
        return new TimeScale(at(x).minusSeconds(Math.round(x / zoomed * 3600)), zoomed);
    }

    /** Moved so that what was at x is now at x + pixels. */
    public TimeScale panned(double pixels) {
        return new TimeScale(at(-pixels), pixelsPerHour);
    }

    /** Moved as little as needed for a stretch of that width to lie within [from, until]. */
    public TimeScale keptWithin(Instant from, Instant until, double widthPixels) {
        if (x(until) < widthPixels) {
            TimeScale right = panned(widthPixels - x(until));
            return right.leftmost.isBefore(from) ? new TimeScale(from, pixelsPerHour) : right;
        }
        return leftmost.isBefore(from) ? new TimeScale(from, pixelsPerHour) : this;
    }

    /** Moved as little as needed for an instant to be at least a margin away from both edges. */
    public TimeScale showing(Instant at, double widthPixels, double marginPixels) {
        double x = x(at);
        if (x < marginPixels) return panned(marginPixels - x);
        if (x > widthPixels - marginPixels) return panned(widthPixels - marginPixels - x);
        return this;
    }

    private static double bounded(double pixelsPerHour) {
        return Math.min(MOST_PIXELS_PER_HOUR, Math.max(LEAST_PIXELS_PER_HOUR, pixelsPerHour));
    }

    private static double hours(Duration time) {
        return time.toMillis() / 3_600_000.0;
    }
}
