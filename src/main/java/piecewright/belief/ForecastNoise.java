package piecewright.belief;

/**
 * What the equations themselves miss of a piece's moisture while nothing is weighed: an estimate ages, its variance
 * growing with the hours.
 */
public enum ForecastNoise {
    /**
     * Judgement: two points in a soak of eight hours: uptake of second order, as here, and diffusion into spheres
     * part by so much when both fit the same table.
     */
    WETTING(0.0080),
    /** Judgement: half a point in a day, drained or growing. */
    LYING(0.0010),
    /** Judgement: two points in six hours: one layer stands for a bed that dries from below. */
    DRYING(0.0080);

    private final double sdPerRootHour;

    ForecastNoise(double sdPerRootHour) {
        this.sdPerRootHour = sdPerRootHour;
    }

    /** Variance of the moisture after so many hours, wet basis. */
    public double variance(double hours) {
        return sdPerRootHour * sdPerRootHour * hours;
    }
}
