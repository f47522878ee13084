package piecewright.process.steep;

import java.util.Objects;
import piecewright.process.GrowthState;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;

/**
 * Drained grain between or after immersions. The core drinks from the outer layer, so corns gain what the film loses;
 * grain drifts towards the air, χ rises, growth starts at χ = 1, the corns breathe a little.
 */
public final class AirRest implements Stage {
    private final SteepModel model;
    private final Metabolism metabolism;
    private final Surroundings surroundings;
    private final Standing standing;

    public AirRest(SteepModel model, Metabolism metabolism, Surroundings surroundings, Standing standing) {
        this.model = Objects.requireNonNull(model);
        this.metabolism = Objects.requireNonNull(metabolism);
        this.surroundings = Objects.requireNonNull(surroundings);
        this.standing = Objects.requireNonNull(standing);
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        SteepState was = start.steep();
        double airC = surroundings.airC(atHours + stepHours / 2);
        double tauHours = model.parameters().warming().hours(standing, Wetting.grainL(start.mass()));
        double startC = start.grainC();
        double halfRatio = Math.exp(-stepHours / 2 / tauHours);
        double middleC = airC + (startC - airC) * halfRatio;
        double endC = airC + (startC - airC) * halfRatio * halfRatio;
        double chitPerHour = metabolism.chitPerHour(middleC);
        double gain = model.chitGain(was.chitRatio() + chitPerHour * stepHours / 2);
        double coreRatio = core(was, new double[] {startC, middleC, endC}, gain, stepHours);
        double leftRatio = was.outerRatio() - (coreRatio - was.coreRatio());
        double lostRatio = Math.min(model.parameters().uptake().evaporationPerHour() * stepHours, leftRatio);
        SteepState rested = new SteepState(
                coreRatio,
                leftRatio - lostRatio,
                was.soakHours(),
                was.waterChanges(),
                was.chitRatio() + chitPerHour * stepHours);
        double moistureFraction = start.mass().moisture().wetBasisFraction();
        double respiredKg =
                start.mass().dryMatterKg() * stepHours * metabolism.steepRespiredPerHour(middleC, moistureFraction);
        PieceState aired =
                Metabolism.bookEvaporation(start, lostRatio * start.mass().initialDryMatterKg());
        return Metabolism.bookRespiration(aired, respiredKg)
                .withSteep(rested)
                .withGrowth(grown(start, rested, middleC, stepHours))
                .withGrainC(endC);
    }

    /** Core water a step later, Runge–Kutta with temperatures at start, middle and end. */
    private double core(SteepState was, double[] grainC, double gain, double stepHours) {
        double startPerHour = model.theta(grainC[0]) * gain;
        double middlePerHour = model.theta(grainC[1]) * gain;
        double endPerHour = model.theta(grainC[2]) * gain;
        double k1 = drinks(was, 0, 0, startPerHour);
        double k2 = drinks(was, stepHours / 2 * k1, stepHours / 2, middlePerHour);
        double k3 = drinks(was, stepHours / 2 * k2, stepHours / 2, middlePerHour);
        double k4 = drinks(was, stepHours * k3, stepHours, endPerHour);
        double gainedRatio = stepHours / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
        return was.coreRatio() + Math.min(gainedRatio, was.outerRatio());
    }

    private double drinks(SteepState was, double gainedRatio, double sinceHours, double equivalentPerHour) {
        double lostRatio = model.parameters().uptake().evaporationPerHour() * sinceHours;
        return model.restPerHour(
                was.coreRatio() + gainedRatio, was.outerRatio() - gainedRatio - lostRatio, equivalentPerHour);
    }

    /** Growth over the part of the step after χ = 1. */
    private GrowthState grown(PieceState start, SteepState rested, double grainC, double stepHours) {
        double fromRatio = start.steep().chitRatio();
        if (rested.chitRatio() <= 1) return start.growth();
        double share = fromRatio >= 1 ? 1 : (rested.chitRatio() - 1) / (rested.chitRatio() - fromRatio);
        double moistureFraction = start.mass().moisture().wetBasisFraction();
        GrowthState growth = start.growth();
        return new GrowthState(
                growth.growthRatio() + share * stepHours * metabolism.growthPerHour(grainC, moistureFraction),
                growth.rootletDays() + share * stepHours * metabolism.rootletDaysPerHour(grainC));
    }
}
