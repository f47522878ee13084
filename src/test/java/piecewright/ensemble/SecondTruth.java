package piecewright.ensemble;

import java.time.Instant;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.PhaseKind;
import piecewright.plan.Setup;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.kiln.CoveredStew;
import piecewright.process.kiln.RoastCourse;

/**
 * Stands in for reality: sphere diffusion in the steep, two nodes in the couch, a layered bed in the kiln, the
 * floor as our own model has it but with this member's rates. One run only, in time order.
 */
final class SecondTruth implements Reality {
    private final Reality floor;
    private final SphereSteep steep;
    private final Optional<Stage> couch;
    private final LayeredKiln kiln;

    SecondTruth(Blueprint blueprint, Member member, Instant asOf) {
        Weather weather = new Weather(blueprint, asOf);
        Setup actual = new ActualSetup(blueprint, member, weather).setup();
        this.floor = ModelReality.of(blueprint, member, weather);
        this.steep = new SphereSteep(actual, member);
        this.couch = actual.couching().map(couching -> new TwoNodeCouch(couching.model(), couching.air()));
        this.kiln = new LayeredKiln(actual, member);
    }

    @Override
    public PieceState raw() {
        return floor.raw();
    }

    @Override
    public Passing after(Visit visit, Passing before) {
        return switch (visit.kind()) {
            case SOAK -> passing(PhaseKind.IMMERSION, steep.immersion(visit.number()));
            case DRAIN -> passing(PhaseKind.AIR_REST, steep.rest());
            case PACK -> passing(PhaseKind.COUCHING, couch.orElseThrow());
            case LOAD, RAISE -> passing(PhaseKind.DRYING, kiln.drying(visit.number()));
            case CURE -> passing(PhaseKind.CURING, kiln.curing());
            default -> floor.after(visit, before);
        };
    }

    private static Passing passing(PhaseKind kind, Stage stage) {
        return new Passing(kind, Optional.of(stage), Optional.empty());
    }

    @Override
    public Passing foreseen(Visit visit, Passing before, Passing after) {
        return floor.after(visit, before);
    }

    @Override
    public PieceState acted(Visit visit, PieceState before, double waterKg) {
        if (visit.kind() == ActKind.LOAD) kiln.load(before);
        if (visit.kind() == ActKind.STIR || visit.kind() == ActKind.RAISE || visit.kind() == ActKind.CURE) kiln.stir();
        return floor.acted(visit, before, waterKg);
    }

    @Override
    public CoveredStew stew() {
        return floor.stew();
    }

    @Override
    public RoastCourse roast() {
        return floor.roast();
    }

    @Override
    public double sprinklingKg(Visit visit, PieceState before, Passing passing, Instant growthEnds) {
        return floor.sprinklingKg(visit, before, passing, growthEnds);
    }
}
