package piecewright.learn;

import java.time.Instant;
import java.util.Objects;

/**
 * One figure somebody read.
 *
 * @param key names the journal entry it comes from
 * @param value in the figure's unit
 * @param sd standard error, above 0; of the logarithm for acrospires and colours
 */
public record Observation(String key, Instant at, Figure figure, double value, double sd) {
    public Observation {
        Objects.requireNonNull(key);
        Objects.requireNonNull(at);
        Objects.requireNonNull(figure);
        if (!Double.isFinite(value)) throw new IllegalArgumentException("value must be a number: " + value);
        if (!(sd > 0)) throw new IllegalArgumentException("sd must be above 0: " + sd);
    }
}
