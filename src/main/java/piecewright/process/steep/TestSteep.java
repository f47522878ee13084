package piecewright.process.steep;

import java.util.OptionalDouble;
import piecewright.house.Scale;
import piecewright.quantity.Moisture;

/**
 * A sample steeped once in a net: one weighing fixes how fast the lot drinks. Leaching and breath of the few hours are
 * left out; they are under half a point.
 *
 * @param startG as it came from the sack, g, above 0
 * @param drainedG after dripping for a quarter of an hour, net taken off, g, above startG
 * @param hours under water, above 0
 * @param waterC mean temperature of the water, °C
 */
public record TestSteep(double startG, double drainedG, double hours, double waterC) {
    /** Judgement: what a test soak takes on a kitchen scale that shows grams, g. */
    private static final double USUAL_SAMPLE_G = 100;

    /**
     * Judgement: a sample of so many steps drinks about thirteen of them; two readings, each off by a step over the root
     * of twelve, then tell what it drank to 3 % and the rate, which changes three times as fast, to 9 %.
     */
    private static final int LEAST_STEPS = 40;

    /** Judgement: more grain than that nobody throws away for a test, g. */
    private static final double MOST_SAMPLE_G = 1000;

    /** The grain a test takes on this scale, g; empty where its step is too coarse to tell anything of a sample. */
    public static OptionalDouble sampleG(Scale scale) {
        double sampleG = Math.max(USUAL_SAMPLE_G, LEAST_STEPS * scale.stepG());
        return sampleG <= MOST_SAMPLE_G ? OptionalDouble.of(sampleG) : OptionalDouble.empty();
    }

    public TestSteep {
        if (!(startG > 0)) throw new IllegalArgumentException("startG must be above 0: " + startG);
        if (!(drainedG > startG)) {
            throw new IllegalArgumentException("drainedG must be more than startG: " + drainedG);
        }
        if (!(hours > 0)) throw new IllegalArgumentException("hours must be above 0: " + hours);
    }

    /**
     * The lot multiplier m of the uptake rate; not a number if no rate explains the weight.
     *
     * @param model of the lot, whatever its own rate
     */
    public double rateRatio(Moisture raw, SteepModel model) {
        double dryG = startG * (1 - raw.wetBasisFraction());
        double drainedRatio = (drainedG - dryG) / dryG;
        return model.rateRatioOfTestSoak(raw.dryBasisRatio(), drainedRatio, hours * model.theta(waterC));
    }
}
