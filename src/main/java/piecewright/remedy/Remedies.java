package piecewright.remedy;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.Plans;

/** Finds the smallest changes that help when nothing fits; every one is planned before it is offered. */
public final class Remedies {
    private final Plans planner;

    /** @param planner pure, for any number of threads */
    public Remedies(Plans planner) {
        this.planner = planner.hurried();
    }

    /** Of each kind of change the smallest that gives a plan, what asks least first; empty when none does. */
    public List<Remedy> against(PlanRequest request, List<Obstacle> obstacles) {
        Changed changed = new Changed(request);
        List<List<Change>> kinds = new Steps(request).against(obstacles);
        return kinds.parallelStream()
                .map(kind -> first(kind, changed, new Pot(kinds.size())))
                .flatMap(Optional::stream)
                .toList();
    }

    private Optional<Remedy> first(List<Change> kind, Changed changed, Pot pot) {
        try {
            Plans within = planner.watchedBy(pot);
            return kind.stream()
                    .flatMap(change -> tried(change, changed.by(change), within))
                    .findFirst();
        } catch (CancellationException enough) {
            if (pot.isEmpty()) return Optional.empty();
            throw enough;
        }
    }

    private static Stream<Remedy> tried(Change change, PlanRequest request, Plans within) {
        return within.apply(request)
                .match(
                        planned -> Stream.of(new Remedy(change, request, planned.plan())),
                        notPossible -> Stream.empty());
    }
}
