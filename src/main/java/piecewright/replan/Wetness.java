package piecewright.replan;

/** How long malt keeps whose drying stopped. */
public enum Wetness {
    /** It spoils within hours unless it is spread and turned. */
    WET,
    /** It keeps for a day or two in the cool. */
    DAMP,
    /** It keeps for days. */
    DRY;

    /** Judgement: practice, wetter than this stopped malt must be spread and turned, wet basis. */
    private static final double WET_FRACTION = 0.25;
    /** Judgement: practice, drier than this stopped malt keeps for days, wet basis. */
    private static final double DRY_FRACTION = 0.12;

    /** @param moistureFraction wet basis */
    public static Wetness of(double moistureFraction) {
        if (moistureFraction > WET_FRACTION) return WET;
        return moistureFraction > DRY_FRACTION ? DAMP : DRY;
    }
}
