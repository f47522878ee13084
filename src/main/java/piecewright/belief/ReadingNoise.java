package piecewright.belief;

import piecewright.grain.GrainLot;
import piecewright.house.Scale;
import piecewright.process.GrainMass;

/** How well a weight tells moisture, as shares of wet weight. */
public final class ReadingNoise {
    /** Judgement: a sample dried in an oven at home. */
    public static final double SAMPLE_FRACTION = 0.005;
    /** Judgement: drained the same way each time a weighing is out by half a point at 44 %. */
    public static final double DRAINED_FRACTION = 0.005;
    /** Judgement: dry matter lost in the steep is known to half a hundredth. */
    private static final double STEEP_LOSS_SD = 0.005;
    /** Judgement: and each hundredth lost later to four tenths of it. */
    private static final double LATER_LOSS_SD = 0.4;
    /** Judgement: what the steep washes out at most, share of the dry matter. */
    private static final double STEEP_LOSS_RATIO = 0.01;
    /** Judgement: film and crumbs are in proportion to the water, of which .8 kg per kg is usual, kg/kg. */
    private static final double USUAL_WATER_RATIO = 0.8;

    private ReadingNoise() {}

    /** Draining, crumbs and the scale's step: what two weighings in a row differ by. */
    public static double sdFraction(Scale scale, GrainMass mass) {
        double dry = 1 - mass.moisture().wetBasisFraction();
        double step = scale.stepG() / 1000 / Math.sqrt(12) / mass.totalKg();
        return Math.hypot(dry * step, DRAINED_FRACTION * mass.dryBasisRatio() / USUAL_WATER_RATIO);
    }

    /** Dry matter behind the weight, M = 1 − D / W: doubts of raw moisture and of losses; the same in each weighing. */
    public static double dryMatterSdFraction(GrainLot lot, GrainMass mass) {
        double raw =
                lot.moisture().sdFraction() / (1 - lot.moisture().moisture().wetBasisFraction());
        double lost = 1 - mass.dryMatterKg() / mass.initialDryMatterKg();
        double loss = STEEP_LOSS_SD + LATER_LOSS_SD * Math.max(0, lost - STEEP_LOSS_RATIO);
        return (1 - mass.moisture().wetBasisFraction()) * Math.hypot(raw, loss);
    }
}
