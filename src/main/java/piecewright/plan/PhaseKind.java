package piecewright.plan;

/** What the grain does by itself between acts. */
public enum PhaseKind {
    IMMERSION,
    AIR_REST,
    WET_COUCHING,
    GROWTH,
    WITHERING,
    COUCHING,
    COOLING,
    DRYING,
    CURING,
    STORED,
    RESTING;

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
