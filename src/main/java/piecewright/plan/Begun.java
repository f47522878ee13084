package piecewright.plan;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import piecewright.plan.Timetable.Visit;

/**
 * A piece whose plan was begun.
 *
 * @param grainKg grain as bought that went into the steep, floaters included, kg
 * @param visits acts done so far, in time order; empty while the grain is dry
 * @param found what was found on the way, nothing after now
 * @param standing the acts to come as they stand in the plan so far, in time order
 */
public record Begun(double grainKg, List<Visit> visits, Found found, List<Visit> standing, Instant now) {
    public Begun {
        visits = List.copyOf(visits);
        standing = List.copyOf(standing);
        Objects.requireNonNull(found);
        Objects.requireNonNull(now);
        if (!(grainKg > 0)) throw new IllegalArgumentException("grainKg must be above 0: " + grainKg);
    }

    Begun withVisits(List<Visit> changed) {
        return new Begun(grainKg, changed, found, standing, now);
    }
}
