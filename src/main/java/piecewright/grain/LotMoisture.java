package piecewright.grain;

import java.util.Objects;
import piecewright.quantity.Moisture;

/**
 * Moisture of the raw grain with how well it is known.
 *
 * @param sdFraction standard deviation, share of wet weight, 0 or more (0.003 measured, 0.01 guessed)
 * @param measured true when a meter or oven told it, false when guessed
 */
public record LotMoisture(Moisture moisture, double sdFraction, boolean measured) {
    public LotMoisture {
        Objects.requireNonNull(moisture);
        if (!(sdFraction >= 0 && sdFraction < 0.2)) {
            throw new IllegalArgumentException("sdFraction must be in [0, 0.2): " + sdFraction);
        }
    }
}
