package piecewright.replan;

import java.time.Instant;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.plan.Plan.Sample;
import piecewright.plan.Rules;
import piecewright.style.GrowthSchedule;

/**
 * A bed under way that gets so warm that it spoils: nothing is refused any more, somebody must see to it.
 *
 * @param from when it is too warm first, °C
 * @param expectedC the warmest it would get, °C
 * @param warmestC what its style takes, °C
 */
public record HotBed(Instant from, double expectedC, double warmestC) {
    private static final Set<ActKind> LIFTS = EnumSet.of(ActKind.PACK, ActKind.STEW, ActKind.LOAD);

    /** Whether the bed would get so warm from now on, left to its plan; empty where it does not, or none lies or will lie. */
    static Optional<HotBed> of(GrowthSchedule growth, Plan plan, Instant now) {
        Optional<Instant> spread = first(plan, EnumSet.of(ActKind.FLOOR));
        Instant lifted = first(plan, LIFTS).orElse(Instant.MAX);
        if (spread.isEmpty()) return Optional.empty();
        double warmestC = growth.warmestGrainC();
        List<Sample> tooWarm = plan.course().stream()
                .filter(sample -> !sample.at().isBefore(now)
                        && !sample.at().isBefore(spread.get())
                        && sample.at().isBefore(lifted)
                        && sample.state().grainC() > warmestC + Rules.BED_SPOILS_OVER_K)
                .toList();
        return tooWarm.stream()
                .map(sample -> sample.state().grainC())
                .max(Comparator.naturalOrder())
                .map(expectedC -> new HotBed(tooWarm.get(0).at(), expectedC, warmestC));
    }

    private static Optional<Instant> first(Plan plan, Set<ActKind> kinds) {
        return plan.acts().stream()
                .filter(act -> kinds.contains(act.kind()))
                .map(Act::startsAt)
                .findFirst();
    }
}
