package piecewright.learn;

/** Whether a figure nothing explains was read in the other unit. */
final class OtherUnit {
    /** Judgement: a weight in the other unit is recognised when it then fits so well, share. */
    private static final double FITS_FRACTION = 0.08;
    /** Judgement: the same for temperatures, K. */
    private static final double FITS_K = 6;
    /** Source: international avoirdupois pound, kg. */
    private static final double POUND_KG = 0.45359237;

    private OtherUnit() {}

    /** Whether it is what was foretold once pounds are taken for kilograms, or Fahrenheit for Celsius. */
    static boolean fits(Observation observation, double foretold) {
        double read = observation.value();
        return switch (observation.figure()) {
            case WEIGHT -> near(read * POUND_KG, foretold) || near(read / POUND_KG, foretold);
            case GRAIN_TEMPERATURE, AIR_TEMPERATURE ->
                Math.abs((read - 32) / 1.8 - foretold) < FITS_K || Math.abs(read * 1.8 + 32 - foretold) < FITS_K;
            case MOISTURE, ACROSPIRE, COLOUR -> false;
        };
    }

    private static boolean near(double kg, double foretoldKg) {
        return Math.abs(kg / foretoldKg - 1) < FITS_FRACTION;
    }
}
