package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.Map;
import java.util.Objects;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;

/**
 * What a search may do that only moves the acts of a timetable.
 *
 * @param acts when they stand, by id; the acts that bound phases and are not named do not happen
 * @param within no act moves further
 * @param belowMinutes only timetables that cost less are of use, cost-minutes
 */
public record Nearby(Map<String, Instant> acts, Duration within, double belowMinutes) {
    public Nearby {
        acts = Map.copyOf(acts);
        Objects.requireNonNull(within);
    }

    /** The acts of this timetable, moved by so much at most to cost less than that. */
    public static Nearby of(Timetable timetable, Duration within, double belowMinutes) {
        Map<String, Instant> acts = new HashMap<>();
        for (Visit visit : timetable.visits()) acts.put(visit.id(), visit.at());
        return new Nearby(acts, within, belowMinutes);
    }

    /** Whether the act of a stop may begin at this instant. */
    boolean lets(String actId, Instant at) {
        Instant stands = acts.get(actId);
        return stands != null && Duration.between(stands, at).abs().compareTo(within) <= 0;
    }
}
