package piecewright.app;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.chart.CouchChart;
import piecewright.plan.HeapCurve;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.sheet.Known;

/**
 * What papers are made of.
 *
 * @param heaps the hot couch; empty for a plan without one
 */
public record Papers(PlanRequest request, Plan plan, Known known, Optional<CouchChart.Heaps> heaps) {
    public Papers {
        Objects.requireNonNull(request);
        Objects.requireNonNull(plan);
        Objects.requireNonNull(known);
        Objects.requireNonNull(heaps);
    }

    /**
     * Of a plan that nobody began.
     *
     * @param now when the weather was told, unless the wish says from when on it counts
     */
    public static Papers of(PlanRequest request, Plan plan, Instant now) {
        ModelParameters parameters = ModelParameters.defaults();
        return new Papers(
                request,
                plan,
                Known.of(new WeightBands(request, new HowSure(parameters)).of(plan, now)),
                HeapCurve.of(parameters, request, plan)
                        .map(heap -> new CouchChart.Heaps(heap, Optional.empty(), List.of())));
    }
}
