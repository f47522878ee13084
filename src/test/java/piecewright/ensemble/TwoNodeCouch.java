package piecewright.ensemble;

import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;

/**
 * Another account of the hot couch: a core and a rind of equal mass, each with its own warmth and its own dying heat
 * source, joined by conduction, the rind alone losing heat; oxygen limits the whole, Q / (1 + Q / 51 W), with the
 * stronger heat of 1.7 W/kg that goes with that limit.
 */
final class TwoNodeCouch {
    private static final double STEP_HOURS = 1.0 / 60;
    private static final double OXYGEN_W = 51;
    private static final double HEAT_AT_20_RATIO = 1.7 / CouchParameters.Heat.AT_20_W_PER_KG;
    private static final double JOINED_W_PER_K = 1.2;

    private final CouchModel model;
    private final double lossWPerK;
    private final double dryKg;
    private final double moistureFraction;

    TwoNodeCouch(CouchModel model, double lossWPerK, double dryKg, double moistureFraction) {
        this.model = model;
        this.lossWPerK = lossWPerK;
        this.dryKg = dryKg;
        this.moistureFraction = moistureFraction;
    }

    /** The hottest the mean of the pile gets within so many hours, °C. */
    double peakC(double startC, double airC, double hours) {
        double[] pileC = {startC, startC};
        double[] capacity = {1, 1};
        double waterKg = dryKg * moistureFraction / (1 - moistureFraction);
        double halfKJPerK = model.capacityKJPerK(dryKg, waterKg) / 2;
        double peakC = startC;
        for (double at = 0; at < hours; at += STEP_HOURS) {
            double[] heat = new double[2];
            for (int i = 0; i < 2; i++) {
                heat[i] = HEAT_AT_20_RATIO * dryKg / 2 * model.heatWPerKgDry(pileC[i], moistureFraction, capacity[i]);
                capacity[i] *= Math.exp(-STEP_HOURS * model.decayPerHour(pileC[i]));
            }
            double allowed = 1 / (1 + (heat[0] + heat[1]) / OXYGEN_W);
            double joined = JOINED_W_PER_K * (pileC[0] - pileC[1]);
            double lost = lossWPerK * (pileC[1] - airC) + model.evaporationW(pileC[1]);
            pileC[0] += 3.6 * STEP_HOURS * (heat[0] * allowed - joined) / halfKJPerK;
            pileC[1] += 3.6 * STEP_HOURS * (heat[1] * allowed + joined - lost) / halfKJPerK;
            peakC = Math.max(peakC, (pileC[0] + pileC[1]) / 2);
        }
        return peakC;
    }
}
