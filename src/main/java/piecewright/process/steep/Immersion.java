package piecewright.process.steep;

import java.util.Objects;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;

/**
 * Grain under water. Entering fills in fresh water and the outer layer; then the core drinks, water and grain drift
 * towards the air, χ rises, the water leaches, the corns breathe a little. Corns do not grow under water.
 */
public final class Immersion implements Stage {
    private final SteepModel model;
    private final Metabolism metabolism;
    private final Surroundings surroundings;
    private final Standing standing;
    private final Bath bath;

    /** Throws IllegalArgumentException for grain that stands SPREAD. */
    public Immersion(SteepModel model, Metabolism metabolism, Surroundings surroundings, Standing standing, Bath bath) {
        this.model = Objects.requireNonNull(model);
        this.metabolism = Objects.requireNonNull(metabolism);
        this.surroundings = Objects.requireNonNull(surroundings);
        this.standing = Objects.requireNonNull(standing);
        this.bath = Objects.requireNonNull(bath);
        if (standing == Standing.SPREAD) throw new IllegalArgumentException("standing must hold water: " + standing);
    }

    @Override
    public PieceState entered(PieceState before) {
        SteepState was = before.steep();
        SteepState wet = new SteepState(
                was.coreRatio(),
                Math.max(was.outerRatio(), model.filledOuterRatio()),
                was.soakHours(),
                was.waterChanges() + 1,
                was.chitRatio());
        return Wetting.drunk(before, wet, model).withGrainC(Wetting.mixedC(before.mass(), before.grainC(), bath));
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        SteepState was = start.steep();
        double volumeL = bath.waterL() + Wetting.grainL(start.mass());
        double airC = surroundings.airC(atHours + stepHours / 2);
        double tauHours = model.parameters().warming().hours(standing, volumeL);
        double startC = start.grainC();
        double halfRatio = Math.exp(-stepHours / 2 / tauHours);
        double middleC = airC + (startC - airC) * halfRatio;
        double endC = airC + (startC - airC) * halfRatio * halfRatio;
        double soakHours = stepHours / 6 * (model.theta(startC) + 4 * model.theta(middleC) + model.theta(endC));
        double chitPerHour = metabolism.chitPerHour(middleC);
        double gain = model.chitGain(was.chitRatio() + chitPerHour * stepHours / 2);
        SteepState wet = new SteepState(
                model.coreAfterSoak(was.coreRatio(), soakHours * gain),
                was.outerRatio(),
                was.soakHours() + soakHours,
                was.waterChanges(),
                was.chitRatio() + chitPerHour * stepHours);
        double respiredKg = start.mass().dryMatterKg()
                * stepHours
                * metabolism.steepRespiredPerHour(
                        middleC, start.mass().moisture().wetBasisFraction());
        return Metabolism.bookRespiration(Wetting.drunk(start, wet, model), respiredKg)
                .withGrainC(endC);
    }
}
