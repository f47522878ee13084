package piecewright.ensemble;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.random.RandomGenerator;
import piecewright.plan.Blueprint;
import piecewright.plan.ModelParameters;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** A plan made for a test, taken apart again. */
final class Followed {
    static final Instant AS_OF = Instant.parse("2027-03-20T00:00:00Z");
    static final Planner PLANNER = new Planner(ModelParameters.defaults());

    /** Scales and eyes that never err. */
    static final RandomGenerator EXACT = new Exact();

    private Followed() {}

    private static final Map<String, Blueprint> PLANS = new ConcurrentHashMap<>();

    /** The demo batch of one of the demo houses. */
    static Blueprint demo(String house) {
        return demo("pale", house);
    }

    /** Four kilograms of a style from the demo barley in a demo house, planned once in a test run. */
    static Blueprint demo(String style, String house) {
        return PLANS.computeIfAbsent(style + " " + house, key -> of(wish(style, house)));
    }

    private static PlanRequest wish(String style, String house) {
        try {
            Path data = Path.of("demo-data");
            return new PlanRequest(
                    StyleLibrary.builtIn().style(style),
                    LotFile.read(data.resolve("lots/two-row-barley.json")),
                    HouseFile.read(data.resolve("houses/" + house + ".json")),
                    new PlanRequest.Amount.FinishedMalt(house.equals("terrace-kitchen") ? 2.5 : 4),
                    new PlanRequest.When.ReadyBy(
                            LocalDate.of(2027, style.equals("pale") ? 5 : 6, 1), LocalDate.of(2027, 3, 1)));
        } catch (StoreException unreadable) {
            throw new AssertionError(unreadable);
        }
    }

    static Blueprint of(PlanRequest request) {
        Plan plan = ((PlanResult.Planned) PLANNER.plan(request)).plan();
        return PLANNER.blueprint(request, plan);
    }

    /** A member like the plan's belief but for one multiplier. */
    static Member but(Blueprint blueprint, Doubt doubt, double ratio) {
        Belief belief = Belief.prior(blueprint);
        double[] normals = new double[Member.DIMENSIONS];
        normals[doubt.ordinal()] = Math.log(ratio) / belief.sd(doubt);
        return new Member(belief, normals, 1);
    }
}
