package piecewright.process.steep;

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
