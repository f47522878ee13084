package piecewright.bench;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
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
import piecewright.ensemble.Members;
import piecewright.ensemble.Sureness;
import piecewright.house.AirTemperature;
import piecewright.house.House;
import piecewright.house.Place;
import piecewright.plan.Act;
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
 * The README's batch followed through so many ways it may go, on all cores; in a colder garage it takes more days. One
 * run shows how the cost grows both ways: twice the members take twice the time, and beside the hours in the kiln,
 * which every plan has, each further day adds the same. The row "sureness:memberDays" is the time per member and day
 * of the plan. The usual 200 draws are made once and kept, other numbers of them each time anew.
 */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 4, time = 3)
@Measurement(iterations = 5, time = 3)
public class EnsembleBenchmark {
    private static final Path DATA = Path.of("demo-data");
    private static final Instant ASKED = Instant.parse("2027-03-20T00:00:00Z");

    /** A batch and its plan. */
    @State(Scope.Benchmark)
    public static class Batch {
        /** Air of every place, °C: 13 makes a plan of 7 days, 8 of 10, 5 of 14, 4 of 18. */
        @Param({"13", "8", "5", "4"})
        private double airC;

        private final Planner planner = new Planner(ModelParameters.defaults());
        private PlanRequest request;
        private Blueprint blueprint;
        private Belief belief;
        private double days;

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
            List<Act> acts = planned.plan().acts();
            double endHours = blueprint.hours(acts.get(acts.size() - 1).startsAt());
            days = (endHours - blueprint.hours(planned.plan().startsAt())) / 24;
            System.out.printf("%.1f days, %d acts%n", days, acts.size());
        }

        private House aired(House house) {
            AirTemperature air = new AirTemperature.Daily(airC - 2, airC + 2);
            List<Place> places = house.places().stream()
                    .map(place -> new Place(place.name(), air, place.humidityFraction()))
                    .toList();
            return new House(
                    house.name(),
                    house.zone(),
                    places,
                    house.steepWaterC(),
                    house.people(),
                    house.nights(),
                    house.kit());
        }
    }

    /** In how many ways it is followed. */
    @State(Scope.Benchmark)
    public static class Ways {
        @Param({"50", "100", "200", "400"})
        private int members;
    }

    /** Counts what was followed. */
    @State(Scope.Thread)
    @AuxCounters(AuxCounters.Type.OPERATIONS)
    public static class Followed {
        /** Members times days of the plan. */
        public double memberDays;

        @Setup(Level.Iteration)
        public void reset() {
            memberDays = 0;
        }
    }

    /** What a moved colour asks once the acts stay: the same acts once through the reference stages. */
    @Benchmark
    public Simulation.Course forecastOfTheSameActs(Batch batch) {
        Blueprint blueprint = batch.blueprint;
        return new Simulation(blueprint.setup(), blueprint.origin())
                .run(blueprint.timetable(), blueprint.raw(blueprint.setup()));
    }

    /** In microseconds. */
    @Benchmark
    @OutputTimeUnit(TimeUnit.MICROSECONDS)
    public Sureness sureness(Batch batch, Ways ways, Followed followed) {
        followed.memberDays += ways.members * batch.days;
        return Ensemble.of(batch.blueprint, ASKED).sureness(batch.belief, ways.members);
    }

    /** What a wish asks of the window: the plan and how sure it is, in the usual number of ways. */
    @Benchmark
    public Sureness planAndSureness(Batch batch) {
        PlanResult.Planned planned = (PlanResult.Planned) batch.planner.plan(batch.request);
        Blueprint fresh = batch.planner.blueprint(batch.request, planned.plan());
        return Ensemble.of(fresh, ASKED).sureness(Belief.prior(fresh), Members.USUAL);
    }
}
