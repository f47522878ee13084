package piecewright.process.kiln;

/**
 * How fast heat splits the DMS precursor.
 *
 * @param halfLifeHours half-life at boilC, hours, more than 0
 * @param boilC temperature of that half-life, °C
 * @param doublingK fall of temperature that doubles the half-life, K, more than 0
 */
public record PrecursorParameters(double halfLifeHours, double boilC, double doublingK) {
    /** Source: half-life 35 to 38 min in boiling wort (Wilson and Booer 1979; Dickenson 1979), middle 37 min. */
    public static final double HALF_LIFE_HOURS = 37.0 / 60;
    /** Source: the boiling wort of those measurements. */
    public static final double BOIL_C = 100;
    /** Source: "doubles for each fall of 6 °C", quoted with the same measurements. */
    public static final double DOUBLING_K = 6;

    public PrecursorParameters {
        if (!(halfLifeHours > 0)) throw new IllegalArgumentException("halfLifeHours must be above 0: " + halfLifeHours);
        if (!(doublingK > 0)) throw new IllegalArgumentException("doublingK must be above 0: " + doublingK);
    }

    public static PrecursorParameters defaults() {
        return new PrecursorParameters(HALF_LIFE_HOURS, BOIL_C, DOUBLING_K);
    }
}
