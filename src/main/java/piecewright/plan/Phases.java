package piecewright.plan;

import java.util.Optional;
import java.util.OptionalInt;
import piecewright.belief.SlowKiln;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.KilnState;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.couch.HotCouch;
import piecewright.process.germination.Cover;
import piecewright.process.germination.FloorBed;
import piecewright.process.germination.WetHeap;
import piecewright.process.germination.WitherBed;
import piecewright.process.kiln.EnzymeSurvival;
import piecewright.process.kiln.KilnStage;
import piecewright.process.steep.AirRest;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Immersion;
import piecewright.process.steep.Standing;

/** Which stage an act begins. */
public final class Phases {
    private final Setup setup;

    public Phases(Setup setup) {
        this.setup = setup;
    }

    /** The phase after an act; a turning or stirring goes on with the phase it interrupted. */
    public Passing after(Visit visit, Passing before) {
        return switch (visit.kind()) {
            case SOAK -> passing(PhaseKind.IMMERSION, immersion(visit.number()));
            case DRAIN -> passing(PhaseKind.AIR_REST, rest());
            case HEAP -> passing(PhaseKind.WET_COUCHING, heap());
            case FLOOR -> passing(PhaseKind.GROWTH, floor());
            case WITHER -> passing(PhaseKind.WITHERING, wither());
            case PACK -> passing(PhaseKind.COUCHING, couch());
            case BREAK -> passing(PhaseKind.COOLING, cooling());
            case LOAD, RAISE -> drying(visit.number());
            case LOWER -> lowered(before.kind() == PhaseKind.CURING);
            case CURE -> curing();
            case STEW, OFF, DEROOT, ROAST -> Passing.none();
            case LOOK, TURN, SPRINKLE, STIR, CHECK -> before;
        };
    }

    private static Passing passing(PhaseKind kind, Stage stage) {
        return new Passing(kind, Optional.of(stage), Optional.empty());
    }

    private Stage immersion(int number) {
        Bath bath = new Bath(setup.fillC(), setup.outfit().soaking().waterL(number));
        return new Immersion(
                setup.models().steep(), setup.models().metabolism(), setup.air().steep(), Standing.BUCKET, bath);
    }

    private Stage rest() {
        return new AirRest(
                setup.models().steep(), setup.models().metabolism(), setup.air().steep(), setup.restStanding());
    }

    private Stage heap() {
        Heaping heaping = setup.heaping().orElseThrow();
        return new WetHeap(setup.models().metabolism(), setup.models().growth(), heaping.air(), heaping.heap());
    }

    private Stage floor() {
        return new FloorBed(
                setup.models().metabolism(),
                setup.models().growth(),
                setup.air().floor(),
                setup.outfit().growing().areaM2(),
                Cover.DAMP_CLOTH);
    }

    private Stage wither() {
        return new WitherBed(
                setup.models().metabolism(),
                setup.models().growth(),
                setup.air().wither(),
                setup.outfit().withering().areaM2());
    }

    /** A pile that heats itself, and what its heat costs the enzymes. */
    private Stage couch() {
        Couching couching = setup.couching().orElseThrow();
        Stage couch = new HotCouch(couching.model(), couching.air());
        EnzymeSurvival enzymes = new EnzymeSurvival(setup.models().kiln().enzymes());
        return (start, atHours, stepHours) -> {
            PieceState end = couch.step(start, atHours, stepHours);
            KilnState before = start.kiln();
            double kept = enzymes.survivingFraction(
                    (start.grainC() + end.grainC()) / 2, start.mass().moisture().wetBasisFraction(), stepHours);
            return end.withKiln(
                    new KilnState(before.colourEbc(), kept * before.diastaticFraction(), before.smmFraction()));
        };
    }

    /** Spread thin as for a wither; what came out of a hot couch grows no more. */
    private Stage cooling() {
        Stage bed = wither();
        return (start, atHours, stepHours) ->
                bed.step(start, atHours, stepHours).withGrowth(start.growth());
    }

    private Passing drying(int rung) {
        double setC = setup.dryingC(rung);
        HotAir air = setup.outfit().drying().dryer().air();
        return kiln(PhaseKind.DRYING, setC, air);
    }

    /** At the hottest rung that may be left on; where none may, the malt waits without heat. */
    private Passing lowered(boolean cured) {
        Heater heater = HeatLeft.heater(setup, cured);
        OptionalInt rung = HeatLeft.hottestRung(setup, heater);
        return rung.isPresent()
                ? kiln(PhaseKind.DRYING, setup.dryingC(rung.getAsInt()), heater.air())
                : new Passing(PhaseKind.DRYING, Optional.empty(), Optional.empty());
    }

    private Passing curing() {
        return kiln(
                PhaseKind.CURING,
                setup.outfit().drying().cureC(),
                setup.outfit().drying().curingAir());
    }

    private Passing kiln(PhaseKind kind, double setC, HotAir air) {
        var room = kind == PhaseKind.CURING ? setup.air().curer() : setup.air().dryer();
        double substrate = setup.style().kiln().colourBase().substrateRatio();
        var parameters = setup.models().kiln();
        var gates = setup.models().gates();
        SlowKiln tenth = kind == PhaseKind.CURING ? gates.curing() : gates.drying();
        return new Passing(
                kind,
                Optional.of(new KilnStage(parameters, setC, air, room, substrate)),
                Optional.of(new KilnStage(tenth.slow(parameters), setC, tenth.slow(air), room, substrate)));
    }
}
