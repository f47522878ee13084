package piecewright.bench;

import java.time.Instant;
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
import piecewright.house.Heater.HotAir;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.germination.Cover;
import piecewright.process.germination.FloorBed;
import piecewright.process.germination.GrowthParameters;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.KilnStage;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;
import piecewright.process.steep.SteepModel;
import piecewright.process.steep.SteepParameters;
import piecewright.quantity.Moisture;
import piecewright.quantity.TemperatureRange;

/** One phase of each stage by the reference integrator, 5 kg of barley at 14 °C. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class StageBenchmark {
    private static final Instant ORIGIN = Instant.parse("2031-02-01T08:00:00Z");

    private Stage immersion;
    private Stage rest;
    private Stage floor;
    private Stage kiln;
    private PieceState raw;
    private PieceState soaked;
    private PieceState steeped;

    /** Builds the stages and the states they begin with. */
    @Setup
    public void build() {
        Surroundings air = Surroundings.constant(ORIGIN, 14, 0.75);
        Metabolism metabolism = new Metabolism(0.97, 1, MetabolismParameters.defaults());
        SteepModel model = new SteepModel(1.2, 0, SteepParameters.defaults());
        immersion = new Immersion(model, metabolism, air, Standing.BUCKET, new Bath(12, 8));
        rest = new AirRest(model, metabolism, air, Standing.BUCKET);
        floor = new FloorBed(metabolism, GrowthParameters.defaults(), air, 0.4, Cover.DAMP_CLOTH);
        HotAir heater = new HotAir(new TemperatureRange(20, 120), 40, false, 2000, 2);
        kiln = new KilnStage(KilnParameters.defaults(), 50, heater, air, 1);
        raw = PieceState.rawGrain(5, Moisture.ofWetBasisPercent(12), 0, 2.2, 14);
        soaked = immersion.run(raw, 0, 8);
        steeped = rest.run(immersion.run(rest.run(soaked, 8, 18), 18, 26), 26, 60);
    }

    @Benchmark
    public PieceState immersionOf8Hours() {
        return immersion.run(raw, 0, 8);
    }

    @Benchmark
    public PieceState restOf12Hours() {
        return rest.run(soaked, 8, 20);
    }

    @Benchmark
    public PieceState floorOf24Hours() {
        return floor.run(steeped, 60, 84);
    }

    @Benchmark
    public PieceState kilnOf24Hours() {
        return kiln.run(steeped, 60, 84);
    }
}
