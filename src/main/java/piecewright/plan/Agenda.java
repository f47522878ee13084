package piecewright.plan;

import java.util.List;
import java.util.Objects;

/** What a plan asks of people and what the grain does meanwhile, without the physics: all that a calendar tells. */
public record Agenda(Plan.Subject subject, List<Check> checks, List<Act> acts, List<Phase> phases) {
    public Agenda {
        Objects.requireNonNull(subject);
        checks = List.copyOf(checks);
        acts = List.copyOf(acts);
        phases = List.copyOf(phases);
    }

    public static Agenda of(Plan plan) {
        return new Agenda(plan.subject(), plan.checks(), plan.acts(), plan.phases());
    }
}
