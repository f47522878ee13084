package piecewright.ensemble;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * How sure a plan is.
 *
 * @param members realities it was followed through
 * @param acts bands of the acts that take place at all, in the plan's order
 * @param help what would make the plan surer; empty when nothing tried does, or nothing was tried
 */
public record Sureness(
        int members,
        List<ActBands> acts,
        Map<Milestone, TimeBand> milestones,
        Map<Figure, Band> figures,
        Verdict verdict,
        Optional<Help> help) {
    public Sureness {
        acts = List.copyOf(acts);
        milestones = new EnumMap<>(milestones);
        figures = new EnumMap<>(figures);
        Objects.requireNonNull(verdict);
        Objects.requireNonNull(help);
    }

    /** The bands of one act; empty when it never takes place. */
    public Optional<ActBands> act(String id) {
        return acts.stream().filter(act -> act.actId().equals(id)).findFirst();
    }

    /** The band of one figure; empty where this kind of plan has none. */
    public Optional<Band> figure(Figure figure) {
        return Optional.ofNullable(figures.get(figure));
    }

    /** The band of one moment; empty where it never came. */
    public Optional<TimeBand> milestone(Milestone milestone) {
        return Optional.ofNullable(milestones.get(milestone));
    }

    public Sureness withHelp(Optional<Help> changed) {
        return new Sureness(members, acts, milestones, figures, verdict, changed);
    }
}
