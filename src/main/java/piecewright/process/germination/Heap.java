package piecewright.process.germination;

import piecewright.process.GrainMass;

/**
 * The first heap after the steep, the wet couch: so deep or so well wrapped that it keeps its warmth until it chits.
 *
 * @param areaM2 ground it lies on, m², above 0
 * @param lossWPerK heat it loses to the air, all faces and evaporation together, W/K, above 0
 */
public record Heap(double areaM2, double lossWPerK) {
    /** Judgement: a damp cloth and dry sacks or towels over it; about 3 cm of loose cloth with still air outside. */
    private static final double WRAPPED_W_PER_M2_K = 5;
    /** Judgement: the layered model of a hot couch runs 1 K over its mean in the middle; a wet one is no better mixed. */
    public static final double CORE_OVER_MEAN_K = 1;

    public Heap {
        if (!(areaM2 > 0 && lossWPerK > 0)) {
            throw new IllegalArgumentException("areaM2 and lossWPerK must be above 0: " + areaM2 + ", " + lossWPerK);
        }
    }

    /**
     * A square heap under cloths. Heat leaves by the top and the four sides; it comes on average as far as the heap has
     * volume for its surface, so that a wide one loses as a {@link Bed} of its depth does.
     *
     * @param depthM depth it is heaped to, m, above 0; a small piece makes a cube at most
     */
    public static Heap wrapped(GrowthParameters parameters, GrainMass mass, double depthM) {
        double volumeM3 = mass.totalKg() / parameters.bulkKgPerM3();
        double deepM = Math.min(depthM, Math.cbrt(volumeM3));
        double groundM2 = volumeM3 / deepM;
        double surfaceM2 = groundM2 + 4 * Math.sqrt(groundM2) * deepM;
        double wayM = volumeM3 / surfaceM2;
        return new Heap(groundM2, surfaceM2 / (1 / WRAPPED_W_PER_M2_K + wayM / parameters.bedWPerMK()));
    }

    /** Rise of its mean over the air at which it stays, K. */
    public double steadyRiseK(double heatWPerKg, double dryMatterKg) {
        return heatWPerKg * dryMatterKg / lossWPerK;
    }
}
