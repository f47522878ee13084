package piecewright.remedy;

import java.util.Objects;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;

/**
 * A change that was tried and gave a plan.
 *
 * @param request the wish with the change made
 * @param plan the plan that came of it
 */
public record Remedy(Change change, PlanRequest request, Plan plan) {
    public Remedy {
        Objects.requireNonNull(change);
        Objects.requireNonNull(request);
        Objects.requireNonNull(plan);
    }
}
