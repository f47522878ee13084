package piecewright.process.couch;

import java.util.Objects;
import piecewright.process.CouchState;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.RungeKutta;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/** Green malt packed in an insulated box, heating itself. */
public final class HotCouch implements Stage {
    private static final int PILE_C = 0;
    private static final int CAPACITY = 1;
    private static final int RESPIRED_KG = 2;
    private static final int EVAPORATED_KG = 3;
    private static final int INDEX_HOURS = 4;

    private final CouchModel model;
    private final Surroundings surroundings;
    private final boolean massHeld;

    public HotCouch(CouchModel model, Surroundings surroundings) {
        this(model, surroundings, false);
    }

    private HotCouch(CouchModel model, Surroundings surroundings, boolean massHeld) {
        this.model = Objects.requireNonNull(model);
        this.surroundings = Objects.requireNonNull(surroundings);
        this.massHeld = massHeld;
    }

    /** A couch whose water and dry matter stay as packed, as in the runs its constants were fitted with. */
    static HotCouch holdingMass(CouchModel model, Surroundings surroundings) {
        return new HotCouch(model, surroundings, true);
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        CouchState couch = start.couch();
        double[] y = {start.grainC(), couch.capacityRatio(), 0, 0, couch.indexHours()};
        double lossWPerK = model.lossWPerK(CouchModel.barleyKg(start.mass()));
        double[] end = RungeKutta.step(
                y, atHours, stepHours, (hours, now, slope) -> slope(start.mass(), lossWPerK, hours, now, slope));
        PieceState later = start.withCouch(new CouchState(Math.max(0, end[CAPACITY]), end[INDEX_HOURS]))
                .withGrainC(end[PILE_C]);
        if (massHeld) return later;
        return Metabolism.bookRespiration(Metabolism.bookEvaporation(later, end[EVAPORATED_KG]), end[RESPIRED_KG]);
    }

    private void slope(GrainMass start, double lossWPerK, double atHours, double[] now, double[] slope) {
        double dryKg = start.dryMatterKg();
        double waterKg = start.waterKg();
        if (!massHeld) {
            dryKg -= now[RESPIRED_KG];
            waterKg += Metabolism.WATER_FORMED_RATIO * now[RESPIRED_KG] - now[EVAPORATED_KG];
        }
        double moistureFraction = Math.max(0, waterKg) / (Math.max(0, waterKg) + dryKg);
        double pileC = now[PILE_C];
        double heatWPerKg = model.heatWPerKgDry(pileC, moistureFraction, now[CAPACITY]);
        double evaporationW = model.evaporationW(pileC);
        double netW = dryKg * heatWPerKg - lossWPerK * (pileC - surroundings.airC(atHours)) - evaporationW;
        slope[PILE_C] = 3.6 * netW / model.capacityKJPerK(dryKg, waterKg);
        slope[CAPACITY] = -now[CAPACITY] * model.decayPerHour(pileC);
        slope[RESPIRED_KG] = dryKg * Metabolism.respiredPerHour(heatWPerKg);
        slope[EVAPORATED_KG] = evaporationW * 3.6 / CouchModel.LATENT_KJ_PER_KG;
        slope[INDEX_HOURS] = CouchModel.indexPerHour(pileC, moistureFraction);
    }
}
