package piecewright.plan;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** What a plan asks of people and what the grain does meanwhile, without the physics: all that a calendar tells. */
public record Agenda(Plan.Subject subject, List<Check> checks, List<Act> acts, List<Phase> phases) {
    public Agenda {
        Objects.requireNonNull(subject);
        checks = List.copyOf(checks);
        acts = List.copyOf(acts);
        phases = List.copyOf(phases);
    }

    /**
     * Until when somebody who begins this act must stay near: the end of an attended block, or of heat that may not be
     * left; empty where they may go when the act is done.
     */
    public Optional<Instant> staysUntil(Act act) {
        if (act.inner().isPresent()) return Optional.of(act.endsAt());
        Optional<Instant> until = Optional.empty();
        Instant from = act.startsAt();
        for (Phase phase : phases) {
            if (!phase.attended() || !phase.from().equals(from)) continue;
            from = phase.until();
            until = Optional.of(from);
        }
        return until;
    }

    public static Agenda of(Plan plan) {
        return new Agenda(plan.subject(), plan.checks(), plan.acts(), plan.phases());
    }
}
