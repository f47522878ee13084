package piecewright.app;

import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.Planner;
import piecewright.store.CostJson;
import piecewright.text.CostPage;
import piecewright.text.DisplayUnits;

/** Why a plan is as it is: its costs by act and rule, and the next best plan; plans again to find that one. */
public final class PlanCosts {
    private final Planner planner = new Planner(ModelParameters.defaults());
    private final DisplayUnits units;

    public PlanCosts(DisplayUnits units) {
        this.units = units;
    }

    /** As a page of text. */
    public String page(PlanRequest request, Plan plan) {
        return new CostPage(plan, units).of(planner.runnerUp(request, plan));
    }

    /** The plan's JSON document with its costs in it. */
    public String added(String document, PlanRequest request, Plan plan) {
        return CostJson.added(document, plan, planner.runnerUp(request, plan));
    }
}
