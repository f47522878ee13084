package piecewright.learn;

import java.util.Random;
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
import piecewright.belief.Belief;
import piecewright.belief.Values;
import piecewright.plan.ActKind;

/** One update of what is believed: in the middle of a steep, and after a whole batch of eighteen readings. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
public class LearnBenchmark {
    private Belief prior;
    private Rerun steep;
    private Rerun whole;

    /** Reads both batches with errors, once. */
    @Setup
    public void read() {
        prior = MadeUpBatch.prior();
        Random random = new Random(7);
        Values truth = MadeUpBatch.drawn(prior, random);
        MadeUpBatch begun =
                new MadeUpBatch().did(18, ActKind.SOAK).weighed(26, 6.4).did(26, ActKind.DRAIN);
        begun.did(38, ActKind.SOAK).weighed(46, 7.2).did(46, ActKind.DRAIN);
        steep = MadeUpBatch.read(begun.rerun(), truth, random);
        whole = MadeUpBatch.read(MadeUpBatch.whole().rerun(), truth, random);
    }

    @Benchmark
    public Estimate steepWithTwoWeighings() {
        return Estimator.estimate(prior, steep);
    }

    @Benchmark
    public Estimate wholeBatch() {
        return Estimator.estimate(prior, whole);
    }
}
