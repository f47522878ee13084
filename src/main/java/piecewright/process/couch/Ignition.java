package piecewright.process.couch;

import java.util.Objects;
import piecewright.process.GrainMass;
import piecewright.process.PieceState;

/** Whether a pile is big enough to heat itself to 45 °C. */
public final class Ignition {
    /** Judgement: a pile this many times the critical one heats reliably. */
    public static final double RELIABLE_RATIO = 1.4;
    /** Judgement: the couch has caught when it passes this. */
    public static final double CAUGHT_C = 45;

    /** Judgement: the margin is flat there; a finer grid moves the critical size by less than a gram. */
    private static final double GRID_K = 0.05;

    private final CouchModel model;

    public Ignition(CouchModel model) {
        this.model = Objects.requireNonNull(model);
    }

    /** What a pile will do. */
    public enum Outlook {
        WILL_HEAT,
        MARGINAL,
        WILL_NOT;

        /** The word used in files: lower case with hyphens. */
        public String key() {
            return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
        }
    }

    /**
     * Least raw grain (at 12 % moisture) whose pile runs away, kg; infinite when none does.
     *
     * @param moistureFraction at packing, wet basis
     * @param airC of the room, on average
     * @param startC of the pile at packing
     */
    public double criticalKg(double moistureFraction, double airC, double startC) {
        return criticalKg(moistureFraction, airC, startC, CouchModel.RAW_DRY_FRACTION * CouchModel.DRY_LEFT_FRACTION);
    }

    /** The same for a piece with dryPerBarleyRatio kg of dry matter left per kg of raw grain. */
    public double criticalKg(double moistureFraction, double airC, double startC, double dryPerBarleyRatio) {
        double criticalKg = 0;
        int steps = (int) Math.max(0, Math.ceil((CAUGHT_C - startC) / GRID_K));
        double fixedWPerK = model.lossWPerK(0);
        double perKgWPerK = model.lossWPerK(1) - fixedWPerK;
        for (int i = 0; i <= steps; i++) {
            double pileC = steps == 0 ? startC : startC + (CAUGHT_C - startC) * i / steps;
            double riseK = pileC - airC;
            double gainWPerKg =
                    dryPerBarleyRatio * model.heatWPerKgDry(pileC, moistureFraction, 1) - perKgWPerK * riseK;
            double lossW = fixedWPerK * riseK + model.evaporationW(pileC);
            if (lossW <= 0) continue;
            if (gainWPerKg <= 0) return Double.POSITIVE_INFINITY;
            criticalKg = Math.max(criticalKg, lossW / gainWPerKg);
        }
        return criticalKg;
    }

    /** The piece's size as a multiple of the critical one. */
    public double sizeRatio(PieceState packed, double airC) {
        GrainMass mass = packed.mass();
        double barleyKg = CouchModel.barleyKg(mass);
        double criticalKg =
                criticalKg(mass.moisture().wetBasisFraction(), airC, packed.grainC(), mass.dryMatterKg() / barleyKg);
        return criticalKg == 0 ? Double.POSITIVE_INFINITY : barleyKg / criticalKg;
    }

    /** What the piece will do when packed as it is. */
    public Outlook outlook(PieceState packed, double airC) {
        double ratio = sizeRatio(packed, airC);
        if (ratio >= RELIABLE_RATIO) return Outlook.WILL_HEAT;
        return ratio >= 1 ? Outlook.MARGINAL : Outlook.WILL_NOT;
    }
}
