package piecewright.ensemble;

import java.time.Instant;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;
import piecewright.plan.Phases;
import piecewright.plan.Setup;
import piecewright.plan.Simulation;
import piecewright.plan.Simulation.Passing;
import piecewright.plan.Timetable.Visit;
import piecewright.process.GrowthState;
import piecewright.process.PieceState;

/** Our own model, with the parameters of one member. */
public final class ModelReality implements Reality {
    private final PieceState raw;
    private final Phases phases;
    private final Simulation simulation;
    private final double rootletsRatio;

    private ModelReality(Blueprint blueprint, Setup actual, double rootletsRatio) {
        this.raw = blueprint.raw(actual);
        this.phases = new Phases(actual);
        this.simulation = new Simulation(actual, blueprint.origin());
        this.rootletsRatio = rootletsRatio;
    }

    static ModelReality of(Blueprint blueprint, Member member, Weather weather) {
        Setup actual = new ActualSetup(blueprint, member, weather).setup();
        return new ModelReality(blueprint, actual, member.ratio(Doubt.ROOTLETS));
    }

    /** Everything as the plan believes. */
    public static ModelReality expected(Blueprint blueprint) {
        return new ModelReality(blueprint, blueprint.setup(), 1);
    }

    @Override
    public PieceState raw() {
        return raw;
    }

    @Override
    public Passing after(Visit visit, Passing before) {
        return phases.after(visit, before);
    }

    @Override
    public PieceState acted(Visit visit, PieceState before, double waterKg) {
        GrowthState growth = before.growth();
        PieceState rooted = visit.kind() == ActKind.DEROOT
                ? before.withGrowth(new GrowthState(growth.growthRatio(), growth.rootletDays() * rootletsRatio))
                : before;
        return simulation.acted(visit, rooted, waterKg);
    }

    @Override
    public double sprinklingKg(Visit visit, PieceState before, Passing passing, Instant growthEnds) {
        return simulation.sprinklingKg(visit, before, passing, growthEnds);
    }
}
