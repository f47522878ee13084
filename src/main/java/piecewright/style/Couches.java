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

    /** The same with its hot couch, if there is one, better broken at another index, hours. */
    public Couches withIndexHours(double changedHours) {
        return new Couches(hot.map(schedule -> schedule.withIndexHours(changedHours)));
    }

    public static Couches none() {
        return new Couches(Optional.empty());
    }
}
