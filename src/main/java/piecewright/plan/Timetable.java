package piecewright.plan;

import java.time.Instant;
import java.util.List;

/**
 * When each act happens: what a search found, before it is simulated and described.
 *
 * @param visits in time order, the first a soak
 */
public record Timetable(List<Visit> visits) {
    public Timetable {
        visits = List.copyOf(visits);
        if (visits.isEmpty() || visits.get(0).kind() != ActKind.SOAK) {
            throw new IllegalArgumentException("a timetable begins with a soak");
        }
    }

    /**
     * One act at one instant.
     *
     * @param number the immersion, the rung of heat, the turning; 0 where there is only one
     */
    public record Visit(String id, ActKind kind, int number, Instant at) {}

    /** The act from which the malt rests: the last roast, or taking off the kiln. */
    public Visit restsFrom() {
        Visit last = visits.get(visits.size() - 1);
        return last.kind() == ActKind.ROAST ? last : first(ActKind.OFF);
    }

    /** The visit of that kind; throws IllegalArgumentException when there is none. */
    public Visit first(ActKind kind) {
        return visits.stream()
                .filter(visit -> visit.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + kind.key() + " in this timetable"));
    }
}
