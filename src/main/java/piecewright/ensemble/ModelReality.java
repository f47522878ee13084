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
import piecewright.process.kiln.CoveredStew;
import piecewright.process.kiln.RoastCourse;
import piecewright.process.steep.SteepModel;

/** Our own model, with the parameters of one member. */
public final class ModelReality implements Reality {
    private final PieceState raw;
    private final Phases phases;
    private final Simulation simulation;
    private final Ovens ovens;
    private final double rootletsRatio;

    private ModelReality(Blueprint blueprint, Ovens ovens, double rootletsRatio) {
        Setup actual = ovens.setup();
        this.raw = blueprint.raw(actual);
        this.phases = new Phases(actual);
        this.simulation = new Simulation(actual, blueprint.origin());
        this.ovens = ovens;
        this.rootletsRatio = rootletsRatio;
    }

    static ModelReality of(Blueprint blueprint, Member member, Weather weather) {
        ActualSetup actual = new ActualSetup(blueprint, member, weather);
        return new ModelReality(blueprint, actual.ovens(actual.setup()), member.ratio(Doubt.ROOTLETS));
    }

    /** Everything as the plan believes, but the lot drinks so many times as fast. */
    static ModelReality drinking(Blueprint blueprint, double rateRatio) {
        Setup told = blueprint.setup();
        Setup.Models models = told.models();
        SteepModel steep = models.steep();
        SteepModel other = new SteepModel(rateRatio * steep.rateRatio(), steep.startChitRatio(), steep.parameters());
        Setup.Models changed =
                new Setup.Models(other, models.metabolism(), models.growth(), models.kiln(), models.gates());
        Setup actual = new Setup(
                told.style(),
                told.lot(),
                changed,
                told.outfit(),
                told.air(),
                told.heaps(),
                told.dryMatterKg(),
                told.closures());
        return new ModelReality(blueprint, new Ovens(actual, 0, 0), 1);
    }

    /** Everything as the plan believes. */
    public static ModelReality expected(Blueprint blueprint) {
        return new ModelReality(blueprint, new Ovens(blueprint.setup(), 0, 0), 1);
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
    public Passing foreseen(Visit visit, Passing before, Passing after) {
        return after;
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
    public CoveredStew stew() {
        return ovens.stew();
    }

    @Override
    public RoastCourse roast() {
        return ovens.roast();
    }

    @Override
    public double sprinklingKg(Visit visit, PieceState before, Passing passing, Instant growthEnds) {
        return simulation.sprinklingKg(visit, before, passing, growthEnds);
    }
}
