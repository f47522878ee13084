package piecewright.calendar;

import java.time.Instant;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * An act that was done.
 *
 * @param at when
 * @param massKg what the grain weighed at it, kg
 * @param grainC what a thermometer in the grain showed at it, °C
 */
public record Done(Instant at, OptionalDouble massKg, OptionalDouble grainC) {
    public Done {
        Objects.requireNonNull(at);
        Objects.requireNonNull(massKg);
        Objects.requireNonNull(grainC);
    }
}
