package piecewright.plan;

import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.quantity.Moisture;

/**
 * What should be found at an act, just as the phase before it ends (for a weigh-in: drained).
 *
 * @param massKg weight of the whole piece, kg
 * @param moisture drained moisture that weight means
 * @param grainC grain temperature, °C
 * @param acrospireFraction mean acrospire, share of the corn's length; empty before chitting
 */
public record Expectation(double massKg, Moisture moisture, double grainC, OptionalDouble acrospireFraction) {
    public Expectation {
        Objects.requireNonNull(moisture);
        Objects.requireNonNull(acrospireFraction);
    }
}
