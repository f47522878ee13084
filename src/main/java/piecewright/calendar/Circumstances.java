package piecewright.calendar;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import piecewright.house.House;

/**
 * What a batch's entries depend on beside its plan.
 *
 * @param house whose people an alarm may call; empty if alarms may ring at any hour
 * @param done by act id
 */
public record Circumstances(Optional<House> house, Map<String, Done> done) {
    public Circumstances {
        Objects.requireNonNull(house);
        done = Map.copyOf(done);
    }

    /** Nothing is done, nobody's hours are known. */
    public static Circumstances unknown() {
        return new Circumstances(Optional.empty(), Map.of());
    }
}
