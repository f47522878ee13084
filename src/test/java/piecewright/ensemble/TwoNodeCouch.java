package piecewright.ensemble;

import piecewright.process.CouchState;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.couch.CouchModel;
import piecewright.process.couch.CouchParameters;

/**
 * Another account of the hot couch: a core and a rind of equal mass, each with its own warmth and its own dying heat
 * source, joined by conduction, the rind alone losing heat; oxygen limits the whole, Q / (1 + Q / 51 W), with the
 * stronger heat of 1.7 W/kg that goes with that limit. One run only, in time order.
 */
final class TwoNodeCouch implements Stage {
    private static final double PART_HOURS = 1.0 / 60;
    private static final double OXYGEN_W = 51;
    private static final double HEAT_AT_20_RATIO = 1.7 / CouchParameters.Heat.AT_20_W_PER_KG;
    private static final double JOINED_W_PER_K = 1.2;

    private final CouchModel model;
    private final Surroundings air;
    private final double[] pileC = {Double.NaN, Double.NaN};
    private final double[] capacity = {1, 1};

    TwoNodeCouch(CouchModel model, Surroundings air) {
        this.model = model;
        this.air = air;
    }

    private double meanC() {
        return (pileC[0] + pileC[1]) / 2;
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        double turnedK = Double.isNaN(pileC[0]) ? Double.NaN : start.grainC() - meanC();
        for (int i = 0; i < 2; i++) pileC[i] = Double.isNaN(turnedK) ? start.grainC() : pileC[i] + turnedK;
        int parts = Math.max(1, (int) Math.round(stepHours / PART_HOURS));
        double hours = stepHours / parts;
        double indexHours = start.couch().indexHours();
        double dryKg = start.mass().dryMatterKg();
        double moisture = start.mass().moisture().wetBasisFraction();
        double respiredKg = 0;
        for (int part = 0; part < parts; part++) {
            double heatW = warm(start, moisture, air.airC(atHours + part * hours), hours);
            respiredKg += hours * dryKg * Metabolism.respiredPerHour(heatW / dryKg);
            indexHours += hours * CouchModel.indexPerHour(meanC(), moisture);
        }
        PieceState later =
                start.withGrainC(meanC()).withCouch(new CouchState((capacity[0] + capacity[1]) / 2, indexHours));
        return Metabolism.bookRespiration(later, respiredKg);
    }

    /** Warms both halves for so long; the heat of the whole, W. */
    private double warm(PieceState start, double moisture, double airC, double hours) {
        double dryKg = start.mass().dryMatterKg();
        double halfKJPerK = model.capacityKJPerK(dryKg, start.mass().waterKg()) / 2;
        double lossWPerK = model.lossWPerK(CouchModel.barleyKg(start.mass()));
        double[] heatW = new double[2];
        for (int i = 0; i < 2; i++) {
            heatW[i] = HEAT_AT_20_RATIO * dryKg / 2 * model.heatWPerKgDry(pileC[i], moisture, capacity[i]);
            capacity[i] *= Math.exp(-hours * model.decayPerHour(pileC[i]));
        }
        double allowed = 1 / (1 + (heatW[0] + heatW[1]) / OXYGEN_W);
        double joinedW = JOINED_W_PER_K * (pileC[0] - pileC[1]);
        double lostW = lossWPerK * (pileC[1] - airC) + model.evaporationW(pileC[1]);
        pileC[0] += 3.6 * hours * (heatW[0] * allowed - joinedW) / halfKJPerK;
        pileC[1] += 3.6 * hours * (heatW[1] * allowed + joinedW - lostW) / halfKJPerK;
        return allowed * (heatW[0] + heatW[1]);
    }
}
