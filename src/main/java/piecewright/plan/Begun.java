package piecewright.plan;

import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/**
 * A piece whose plan was begun.
 *
 * @param grainKg grain as bought that went into the steep, floaters included, kg
 * @param visits acts done so far, in time order; empty while the grain is dry
 * @param found what was found on the way, nothing after now
 * @param planned all acts as they stand in the plan so far, those done included, in time order
 * @param places the place or kit by name that this plan has each kind of act at; empty where that is not known
 */
public record Begun(
        double grainKg,
        List<Visit> visits,
        Found found,
        List<Visit> planned,
        Map<ActKind, String> places,
        Instant now) {
    public Begun {
        places = Map.copyOf(places);
        visits = List.copyOf(visits);
        planned = List.copyOf(planned);
        Objects.requireNonNull(found);
        Objects.requireNonNull(now);
        if (!(grainKg > 0)) throw new IllegalArgumentException("grainKg must be above 0: " + grainKg);
    }

    /** The same where nothing is known of the places of its plan. */
    public Begun(double grainKg, List<Visit> visits, Found found, List<Visit> planned, Instant now) {
        this(grainKg, visits, found, planned, Map.of(), now);
    }

    Begun withVisits(List<Visit> changed) {
        return new Begun(grainKg, changed, found, planned, places, now);
    }

    public Begun withFound(Found changed) {
        return new Begun(grainKg, visits, changed, planned, places, now);
    }

    /** The planned acts that still can come, where the plan has them: what was passed over stays out. */
    public List<Visit> toCome() {
        Set<String> done = new HashSet<>();
        visits.forEach(visit -> done.add(visit.id()));
        int passed = 0;
        for (int i = 0; i < planned.size(); i++) {
            Visit visit = planned.get(i);
            if (done.contains(visit.id()) && UnderWay.bounds(visit.kind())) passed = i;
        }
        return planned.subList(passed, planned.size()).stream()
                .filter(visit -> !done.contains(visit.id()))
                .toList();
    }
}
