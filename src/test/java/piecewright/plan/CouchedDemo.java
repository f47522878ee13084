package piecewright.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** A malt of the hot couch at the farmhouse, searched for once in a test run. */
public final class CouchedDemo {
    private static final PlanRequest REQUEST = read();
    private static final Plan PLAN =
            ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(REQUEST)).plan();

    private CouchedDemo() {}

    public static PlanRequest request() {
        return REQUEST;
    }

    public static Plan plan() {
        return PLAN;
    }

    private static PlanRequest read() {
        try {
            return new PlanRequest(
                    StyleLibrary.builtIn().style("munich"),
                    LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                    HouseFile.read(Path.of("demo-data/houses/farmhouse.json")),
                    new Amount.FinishedMalt(4),
                    new When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        } catch (StoreException broken) {
            throw new AssertionError(broken);
        }
    }
}
