package piecewright.style;

import java.util.Objects;
import java.util.Optional;

/**
 * What a style does in the oven beside being dried and cured: attended work, minute by minute.
 *
 * @param stew green malt under a cover, after growth and before drying
 * @param roast dry malt on open trays, after everything else
 */
public record OvenSchedule(Optional<StewSchedule> stew, Optional<RoastSchedule> roast) {
    public OvenSchedule {
        Objects.requireNonNull(stew);
        Objects.requireNonNull(roast);
        if (stew.isPresent() && roast.isEmpty()) {
            throw new IllegalArgumentException("stew needs a roast after it");
        }
    }

    public static OvenSchedule none() {
        return new OvenSchedule(Optional.empty(), Optional.empty());
    }
}
