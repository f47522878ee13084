package piecewright.chart;

import java.time.Instant;
import java.util.Objects;

/**
 * Something found while malting, to be shown against the forecast.
 *
 * @param figure wet-basis share, °C or share of the corn, as the kind says
 */
public record Measured(Instant at, Kind kind, double figure) {
    public Measured {
        Objects.requireNonNull(at);
        Objects.requireNonNull(kind);
    }

    /** What was found, each with a mark of its own. */
    public enum Kind {
        /** Moisture by weighing: a circle. */
        WEIGHED,
        /** Grain temperature by thermometer: a cross. */
        READ,
        /** Mean acrospire by counting: a triangle. */
        COUNTED
    }
}
