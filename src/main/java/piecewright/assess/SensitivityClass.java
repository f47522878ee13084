package piecewright.assess;

/** How badly a lot takes more water; class limits from memory of the method. */
public enum SensitivityClass {
    HARDLY,
    SLIGHTLY,
    SENSITIVE,
    VERY;

    /** Judgement: up to 10 points hardly; class limit from memory. */
    private static final double HARDLY_FRACTION = 0.10;
    /** Judgement: up to 25 points slightly; class limit from memory. */
    private static final double SLIGHTLY_FRACTION = 0.25;
    /** Judgement: up to 45 points sensitive; class limit from memory. */
    private static final double SENSITIVE_FRACTION = 0.45;
    /** Judgement: practice, rests 4 h longer for slightly sensitive lots. */
    private static final double SLIGHT_REST_HOURS = 4;
    /** Judgement: practice, rests 8 h longer for sensitive lots. */
    private static final double LONG_REST_HOURS = 8;

    /** The class of a share of corns lost in more water; a figure on a limit counts as the slighter class above 10. */
    public static SensitivityClass of(double lostFraction) {
        double lost = Math.rint(lostFraction * 1e6) / 1e6;
        if (lost < HARDLY_FRACTION) return HARDLY;
        if (lost <= SLIGHTLY_FRACTION) return SLIGHTLY;
        return lost <= SENSITIVE_FRACTION ? SENSITIVE : VERY;
    }

    /** By how much each air rest is better longer, hours; 0 for none. */
    public double longerRestHours() {
        return switch (this) {
            case HARDLY -> 0;
            case SLIGHTLY -> SLIGHT_REST_HOURS;
            case SENSITIVE, VERY -> LONG_REST_HOURS;
        };
    }
}
