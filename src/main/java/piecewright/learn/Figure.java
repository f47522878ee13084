package piecewright.learn;

/** What kind of figure was observed, and on which axis its error is normal. */
public enum Figure {
    /** The whole piece on the scale, kg. */
    WEIGHT("kg"),
    /** Moisture of a dried sample, share of wet weight. */
    MOISTURE("fraction"),
    /** Mean temperature of bed or pile, °C. */
    GRAIN_TEMPERATURE("C"),
    /** Air under the bed, °C. */
    AIR_TEMPERATURE("C"),
    /** Mean acrospire of the germinated corns, share of the corn. */
    ACROSPIRE("fraction"),
    /** Colour, EBC. */
    COLOUR("ebc");

    /** Judgement: warmth from steep-out to chit, K·d, that keeps very short acrospires from counting too much. */
    private static final double CHIT_KELVIN_DAYS = 12;
    /** Judgement: warmth from chit to full modification, K·d. */
    private static final double GROWTH_KELVIN_DAYS = 67;

    private final String unit;

    Figure(String unit) {
        this.unit = unit;
    }

    public String unit() {
        return unit;
    }

    /** The figure on the axis where errors are normal: logarithms of warmth and of colour, others as they are. */
    double compared(double value) {
        return switch (this) {
            case ACROSPIRE -> Math.log(CHIT_KELVIN_DAYS + GROWTH_KELVIN_DAYS * Math.max(0, value));
            case COLOUR -> Math.log(Math.max(0.1, value));
            default -> value;
        };
    }

    /** The figure at a place on that axis. */
    double figure(double compared) {
        return switch (this) {
            case ACROSPIRE -> (Math.exp(compared) - CHIT_KELVIN_DAYS) / GROWTH_KELVIN_DAYS;
            case COLOUR -> Math.exp(compared);
            default -> compared;
        };
    }
}
