package piecewright.style;

import java.util.Objects;
import java.util.Optional;

/**
 * The heaps a style lies in beside its floor.
 *
 * @param wet the first heap after the steep, warmed by its own breath until it has chitted
 * @param hot insulated heap after growth that heats itself and makes dark malt
 */
public record Couches(Optional<WetCouchSchedule> wet, Optional<HotCouchSchedule> hot) {
    public Couches {
        Objects.requireNonNull(wet);
        Objects.requireNonNull(hot);
    }

    /** The same with its hot couch, if there is one, better broken at another index, hours. */
    public Couches withIndexHours(double changedHours) {
        return new Couches(wet, hot.map(schedule -> schedule.withIndexHours(changedHours)));
    }

    public static Couches none() {
        return new Couches(Optional.empty(), Optional.empty());
    }

    /** The same wet couch before another hot one. */
    public Couches withHot(HotCouchSchedule changed) {
        return new Couches(wet, Optional.of(changed));
    }

    /** Another wet couch before the same hot one. */
    public Couches withWet(WetCouchSchedule changed) {
        return new Couches(Optional.of(changed), hot);
    }
}
