package piecewright.ensemble;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
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
    static final RandomGenerator EXACT = new RandomGenerator() {
        @Override
        public long nextLong() {
            return 0;
        }

        @Override
        public double nextDouble() {
            return 0.5;
        }

        @Override
        public double nextGaussian() {
            return 0;
        }
    };

    private Followed() {}

    /** The demo batch of one of the demo houses. */
    static Blueprint demo(String house) {
        try {
            Path data = Path.of("demo-data");
            return of(new PlanRequest(
                    StyleLibrary.builtIn().style("pale"),
                    LotFile.read(data.resolve("lots/two-row-barley.json")),
                    HouseFile.read(data.resolve("houses/" + house + ".json")),
                    new PlanRequest.Amount.FinishedMalt(4),
                    new PlanRequest.When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1))));
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
