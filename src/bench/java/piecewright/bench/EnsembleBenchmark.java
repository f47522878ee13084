package piecewright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.ensemble.Belief;
import piecewright.ensemble.Ensemble;
import piecewright.ensemble.Sureness;
import piecewright.plan.Blueprint;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Simulation;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** The README's batch followed through so many ways it may go, on all cores. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 5)
@Measurement(iterations = 5, time = 5)
public class EnsembleBenchmark {
    private static final Path DATA = Path.of("demo-data");

    @Param({"50", "200", "800"})
    private int members;

    private Blueprint blueprint;
    private Belief belief;

    /** Reads the demo files and plans; the working folder is the project's. */
    @Setup
    public void plan() throws StoreException {
        PlanRequest request = new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.read(DATA.resolve("lots/two-row-barley.json")),
                HouseFile.read(DATA.resolve("houses/cool-garage.json")),
                new PlanRequest.Amount.FinishedMalt(4),
                new PlanRequest.When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        Planner planner = new Planner(ModelParameters.defaults());
        PlanResult.Planned planned = (PlanResult.Planned) planner.plan(request);
        blueprint = planner.blueprint(request, planned.plan());
        belief = Belief.prior(blueprint);
    }

    /** What a moved colour slider asks: the same acts once through the reference stages. */
    @Benchmark
    public Simulation.Course forecastOfTheSameActs() {
        return new Simulation(blueprint.setup(), blueprint.origin())
                .run(blueprint.timetable(), blueprint.raw(blueprint.setup()));
    }

    @Benchmark
    public Sureness sureness() {
        return Ensemble.of(blueprint, Instant.parse("2027-03-20T00:00:00Z")).sureness(belief, members);
    }
}
