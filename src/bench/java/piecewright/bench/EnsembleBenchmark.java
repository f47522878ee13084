package piecewright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
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
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Place;
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

/**
 * The README's batch followed through so many ways it may go, on all cores; in a colder garage it takes more days.
 * Twice the members, or twice the days, should take twice the time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 5)
@Measurement(iterations = 5, time = 5)
public class EnsembleBenchmark {
    private static final Path DATA = Path.of("demo-data");
    private static final Instant ASKED = Instant.parse("2027-03-20T00:00:00Z");

    @Param({"50", "100", "200", "400"})
    private int members;

    /** Air of every place, °C; 13 makes a plan of a week, 7 one of two. */
    @Param({"13", "7"})
    private double airC;

    private final Planner planner = new Planner(ModelParameters.defaults());
    private PlanRequest request;
    private Blueprint blueprint;
    private Belief belief;

    /** Reads the demo files and plans; the working folder is the project's. */
    @Setup
    public void plan() throws StoreException {
        request = new PlanRequest(
                StyleLibrary.builtIn().style("pale"),
                LotFile.read(DATA.resolve("lots/two-row-barley.json")),
                aired(HouseFile.read(DATA.resolve("houses/cool-garage.json"))),
                new PlanRequest.Amount.FinishedMalt(4),
                new PlanRequest.When.ReadyBy(LocalDate.of(2027, 6, 1), LocalDate.of(2027, 3, 1)));
        PlanResult.Planned planned = (PlanResult.Planned) planner.plan(request);
        blueprint = planner.blueprint(request, planned.plan());
        belief = Belief.prior(blueprint);
        System.out.printf(
                "%.1f days%n",
                (blueprint.hours(planned.plan()
                                        .acts()
                                        .get(planned.plan().acts().size() - 1)
                                        .startsAt())
                                - blueprint.hours(planned.plan().startsAt()))
                        / 24);
    }

    private House aired(House house) {
        List<Place> places = house.places().stream()
                .map(place ->
                        new Place(place.name(), new AirTemperature.Daily(airC - 2, airC + 2), place.humidityFraction()))
                .toList();
        return new House(
                house.name(), house.zone(), places, house.steepWaterC(), house.people(), house.nights(), house.kit());
    }

    /** What a moved colour asks once the acts stay: the same acts once through the reference stages. */
    @Benchmark
    public Simulation.Course forecastOfTheSameActs() {
        return new Simulation(blueprint.setup(), blueprint.origin())
                .run(blueprint.timetable(), blueprint.raw(blueprint.setup()));
    }

    @Benchmark
    public Sureness sureness() {
        return Ensemble.of(blueprint, ASKED).sureness(belief, members);
    }

    /** What a wish asks of the window: the plan and how sure it is. */
    @Benchmark
    public Sureness planAndSureness() {
        PlanResult.Planned planned = (PlanResult.Planned) planner.plan(request);
        Blueprint fresh = planner.blueprint(request, planned.plan());
        return Ensemble.of(fresh, ASKED).sureness(Belief.prior(fresh), members);
    }
}
