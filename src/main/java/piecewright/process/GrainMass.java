package piecewright.process;

import piecewright.quantity.Moisture;

/**
 * What lies in the piece now, kg: dry matter as steeped (after floaters), dry matter still there, water.
 *
 * @param initialDryMatterKg dry matter steeped, more than 0; the basis of every "ratio" in the steep
 */
public record GrainMass(double initialDryMatterKg, double dryMatterKg, double waterKg) {
    public GrainMass {
        if (!(initialDryMatterKg > 0)) {
            throw new IllegalArgumentException("initialDryMatterKg must be above 0: " + initialDryMatterKg);
        }
        if (!(dryMatterKg > 0 && dryMatterKg <= initialDryMatterKg * (1 + 1e-9))) {
            throw new IllegalArgumentException("dryMatterKg must be in (0, initial]: " + dryMatterKg);
        }
        if (!(waterKg >= 0)) throw new IllegalArgumentException("waterKg must be 0 or more: " + waterKg);
    }

    /** What a scale would show, kg. */
    public double totalKg() {
        return dryMatterKg + waterKg;
    }

    /** Drained moisture: all water, film included. */
    public Moisture moisture() {
        return new Moisture(waterKg / (waterKg + dryMatterKg));
    }

    /** kg of water per kg of dry matter present. */
    public double dryBasisRatio() {
        return waterKg / dryMatterKg;
    }
}
