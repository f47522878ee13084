package piecewright.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanResult;
import piecewright.plan.Planner;
import piecewright.plan.Seeded;

/**
 * One hundred seeded households of two people, one after the other: median and 95th percentile of what a plan takes, from
 * wish to plan, on the clock.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 2, time = 10)
@Measurement(iterations = 4, time = 15)
public class HouseholdsBenchmark {
    private static final int HOUSEHOLDS = 100;

    private long seed;

    @Benchmark
    public PlanResult plan() {
        seed = (seed + 1) % HOUSEHOLDS;
        return new Planner(ModelParameters.defaults()).plan(Seeded.request(seed));
    }
}
