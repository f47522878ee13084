package piecewright.belief;

import java.util.Objects;

/**
 * A trait of one thing.
 *
 * @param item name of the lot, trays, box or heater it belongs to
 */
public record Unknown(Trait trait, String item) {
    public Unknown {
        Objects.requireNonNull(trait);
        Objects.requireNonNull(item);
    }
}
