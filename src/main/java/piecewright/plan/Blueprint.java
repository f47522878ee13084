package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;
import piecewright.process.PieceState;

/**
 * A plan taken apart again, to be followed: what its physics were, when each act was meant, who can come.
 *
 * @param setup what the plan believes of lot, kit and air
 * @param timetable the acts of the plan; a sprinkling is a turning again
 * @param origin hour 0 of the setup's air
 * @param rawC temperature of the raw grain, °C
 */
public record Blueprint(
        PlanRequest request,
        Plan plan,
        Setup setup,
        Timetable timetable,
        Availability availability,
        Instant origin,
        double rawC) {
    /** Judgement: acts that come late are looked for this long after the plan's last one. */
    private static final Duration LATEST = Duration.ofDays(10);

    public Blueprint {
        Objects.requireNonNull(request);
        Objects.requireNonNull(plan);
        Objects.requireNonNull(setup);
        Objects.requireNonNull(timetable);
        Objects.requireNonNull(availability);
        Objects.requireNonNull(origin);
    }

    static Blueprint of(PlanRequest request, Plan plan, Setup setup, Instant origin, double rawC) {
        Instant last = plan.acts().get(plan.acts().size() - 1).startsAt();
        return new Blueprint(
                request,
                plan,
                setup,
                Timetable.of(plan),
                Availability.of(request.house(), origin, last.plus(LATEST)).beside(request.besides()),
                origin,
                rawC);
    }

    /** Raw grain of that setup as it goes into the steep. */
    public PieceState raw(Setup any) {
        return Searching.raw(any, rawC);
    }

    /** Hours after the origin. */
    public double hours(Instant at) {
        return Duration.between(origin, at).toMillis() / 3_600_000.0;
    }
}
