package piecewright.plan;

import java.util.List;
import java.util.Objects;

/**
 * The next best plan that begins at another time, and why it lost.
 *
 * @param because where it is charged more, or below 0 less, than the plan chosen; largest first
 */
public record RunnerUp(Plan plan, List<Bill.Difference> because) {
    public RunnerUp {
        Objects.requireNonNull(plan);
        because = List.copyOf(because);
    }

    /** How much more it costs in all, cost-minutes. */
    public double moreMinutes(Plan chosen) {
        return plan.costMinutes() - chosen.costMinutes();
    }
}
