package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import piecewright.plan.Rules;

/**
 * Where acts stand that somebody counts on: what it costs to put them elsewhere.
 *
 * @param minuteByStop minutes since the origin
 * @param innerMinutes the same of turnings and stirrings, which are as good as each other
 */
record Held(Map<Integer, Integer> minuteByStop, Set<Integer> innerMinutes) {
    static Held of(Map<String, Instant> published, Stops stops, Instant origin) {
        Map<String, Integer> stopById = new HashMap<>();
        for (int stop = 0; stop < stops.count(); stop++) stopById.put(stops.id(stop), stop);
        Map<Integer, Integer> minuteByStop = new HashMap<>();
        Set<Integer> inner = new HashSet<>();
        published.forEach((id, at) -> {
            int minute = (int) Duration.between(origin, at).toMinutes();
            Integer stop = stopById.get(Stops.first(id));
            if (stop == null) inner.add(minute);
            else minuteByStop.put(stop, minute);
        });
        return new Held(Map.copyOf(minuteByStop), Set.copyOf(inner));
    }

    /** Cost-minutes of an act at this minute; one that stood nowhere before disturbs as much as one that moves. */
    double costMinutes(int stop, int minute) {
        if (minuteByStop.isEmpty()) return 0;
        Integer held = minuteByStop.get(stop);
        return Rules.movesAnAct(held == null ? minute : Math.abs(minute - held));
    }

    /** The same of a turning or stirring. */
    double innerCostMinutes(int minute) {
        return innerMinutes.isEmpty() || innerMinutes.contains(minute) ? 0 : Rules.movesAnAct(1);
    }
}
