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

    /** When the acts of a plan stand. A sprinkling is a turning here; how much is sprinkled follows from the grain. */
    public static Timetable of(Plan plan) {
        return new Timetable(plan.acts().stream()
                .map(act -> {
                    ActKind kind = act.kind() == ActKind.SPRINKLE ? ActKind.TURN : act.kind();
                    return new Visit(act.id(), kind, numberIn(act.id()), act.startsAt());
                })
                .toList());
    }

    /** The number an act's id carries: 2 of "steep-2.drain", 3 of "floor.turn-3", 0 of "kiln.load". */
    public static int numberIn(String actId) {
        int dash = actId.indexOf('-');
        if (dash < 0) return 0;
        int end = dash + 1;
        while (end < actId.length() && Character.isDigit(actId.charAt(end))) end++;
        return end == dash + 1 ? 0 : Integer.parseInt(actId.substring(dash + 1, end));
    }

    /** The visit of that kind; throws IllegalArgumentException when there is none. */
    public Visit first(ActKind kind) {
        return visits.stream()
                .filter(visit -> visit.kind() == kind)
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no " + kind.key() + " in this timetable"));
    }
}
