package piecewright.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** The plan of the README, searched for once in a test run. */
public final class DemoPlan {
    private static final PlanRequest REQUEST = wish("pale", "cool-garage");
    private static final Plan PLAN =
            ((PlanResult.Planned) new Planner(ModelParameters.defaults()).plan(REQUEST)).plan();

    private DemoPlan() {}

    public static PlanRequest request() {
        return REQUEST;
    }

    public static Plan plan() {
        return PLAN;
    }

    /** Four kilograms of a style from the demo barley in a demo house. */
    static PlanRequest wish(String style, String house) {
        try {
            return new PlanRequest(
                    StyleLibrary.builtIn().style(style),
                    LotFile.read(Path.of("demo-data/lots/two-row-barley.json")),
                    HouseFile.read(Path.of("demo-data/houses", house + ".json")),
                    new Amount.FinishedMalt(4),
                    new When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        } catch (StoreException broken) {
            throw new AssertionError(broken);
        }
    }
}
