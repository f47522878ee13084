package piecewright.bench;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.store.HouseFile;
import piecewright.store.LotFile;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;
import piecewright.text.DisplayUnits;
import piecewright.text.PlanPage;

/** The README's batch from wish to plan, and from plan to page. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 5)
@Measurement(iterations = 5, time = 5)
public class PlanBenchmark {
    private static final Path DATA = Path.of("demo-data");

    private PlanRequest request;
    private PlanResult.Planned planned;

    /** Reads the demo files; the working folder is the project's. */
    @Setup
    public void read() throws StoreException {
        request = new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.read(DATA.resolve("lots/two-row-barley.json")),
                HouseFile.read(DATA.resolve("houses/cool-garage.json")),
                new PlanRequest.Amount.FinishedMalt(4),
                new PlanRequest.When.ReadyBy(LocalDate.of(2027, 5, 1), LocalDate.of(2027, 3, 1)));
        planned = (PlanResult.Planned) plan();
    }

    @Benchmark
    public PlanResult plan() {
        return new Planner(ModelParameters.defaults()).plan(request);
    }

    @Benchmark
    public String page() {
        return PlanPage.of(request, planned.plan(), DisplayUnits.metric());
    }
}
