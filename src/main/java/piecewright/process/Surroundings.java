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

    private Surroundings(Instant origin, double[] airC, double humidityFraction, Optional<Instant> repeatsAfter) {
        this.origin = origin;
        this.airC = airC;
        this.humidityFraction = humidityFraction;
        this.repeatsAfter = repeatsAfter;
    }

    /**
     * @param airC air temperature at origin, origin + 5 min, …, °C; at least one, copied
     * @param humidityFraction relative humidity, (0, 1)
     * @param repeatsAfter from when on the figures only repeat the last day known
     */
    public static Surroundings of(
            Instant origin, double[] airC, double humidityFraction, Optional<Instant> repeatsAfter) {
        if (airC.length == 0) throw new IllegalArgumentException("airC must not be empty");
        return new Surroundings(Objects.requireNonNull(origin), airC.clone(), humidityFraction, repeatsAfter);
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
        double position = atHours * STEPS_PER_HOUR;
        if (position <= 0) return airC[0];
        int before = (int) position;
        if (before >= airC.length - 1) return airC[airC.length - 1];
        double share = position - before;
        return airC[before] + share * (airC[before + 1] - airC[before]);
    }
}
