package piecewright.process;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * The air of one place over time, tabulated every five minutes from an origin. Outside the table the nearest value
 * holds. Immutable and thread-safe.
 */
public final class Surroundings {
    /** Steps of the table per hour. */
    public static final int STEPS_PER_HOUR = 12;

    private final Instant origin;
    private final double[] airC;
    private final double humidityFraction;
    private final Optional<Instant> repeatsAfter;
    private final double[] riseByDayK;

    private Surroundings(
            Instant origin,
            double[] airC,
            double humidityFraction,
            Optional<Instant> repeatsAfter,
            double[] riseByDayK) {
        this.origin = origin;
        this.airC = airC;
        this.humidityFraction = humidityFraction;
        this.repeatsAfter = repeatsAfter;
        this.riseByDayK = riseByDayK;
    }

    /**
     * @param airC air temperature at origin, origin + 5 min, …, °C; at least one, copied
     * @param humidityFraction relative humidity, (0, 1)
     * @param repeatsAfter from when on the figures only repeat the last day known
     */
    public static Surroundings of(
            Instant origin, double[] airC, double humidityFraction, Optional<Instant> repeatsAfter) {
        if (airC.length == 0) throw new IllegalArgumentException("airC must not be empty");
        return new Surroundings(
                Objects.requireNonNull(origin), airC.clone(), humidityFraction, repeatsAfter, new double[] {0});
    }

    /**
     * The same place, so much warmer than its figures say.
     *
     * @param riseByDayK at origin, a day later, …, K, linear between and constant outside; at least one, copied
     */
    public Surroundings warmer(double[] riseByDayK) {
        if (riseByDayK.length == 0) throw new IllegalArgumentException("riseByDayK must not be empty");
        return new Surroundings(origin, airC, humidityFraction, repeatsAfter, riseByDayK.clone());
    }

    /** The same air at all times. */
    public static Surroundings constant(Instant origin, double airC, double humidityFraction) {
        return of(origin, new double[] {airC}, humidityFraction, Optional.empty());
    }

    public Instant origin() {
        return origin;
    }

    /** Relative humidity, the same at all times. */
    public double humidityFraction() {
        return humidityFraction;
    }

    public Optional<Instant> repeatsAfter() {
        return repeatsAfter;
    }

    /** Air temperature, °C, linear between the table's points. */
    public double airC(double atHours) {
        return along(airC, atHours * STEPS_PER_HOUR) + along(riseByDayK, atHours / 24);
    }

    private static double along(double[] points, double position) {
        if (position <= 0) return points[0];
        int before = (int) position;
        if (before >= points.length - 1) return points[points.length - 1];
        double share = position - before;
        return points[before] + share * (points[before + 1] - points[before]);
    }
}
