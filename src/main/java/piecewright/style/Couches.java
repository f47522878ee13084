package piecewright.style;

import java.util.Objects;
import java.util.Optional;

/**
 * The heaps a style lies in beside its floor.
 *
 * @param hot insulated heap after growth that heats itself and makes dark malt
 */
public record Couches(Optional<HotCouchSchedule> hot) {
    public Couches {
        Objects.requireNonNull(hot);
    }

    public static Couches none() {
        return new Couches(Optional.empty());
    }
}
