package piecewright.plan;

/** A malt of the hot couch at the farmhouse, searched for once in a test run. */
public final class CouchedDemo {
    private static final PlanRequest REQUEST = DemoPlan.wish("munich", "farmhouse");
    private static final Plan PLAN =
            ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(REQUEST)).plan();

    private CouchedDemo() {}

    public static PlanRequest request() {
        return REQUEST;
    }

    public static Plan plan() {
        return PLAN;
    }
}
