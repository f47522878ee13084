package piecewright.plan;

/** The hands-on acts of malting. */
public enum ActKind {
    SOAK,
    DRAIN,
    FLOOR,
    TURN,
    SPRINKLE,
    WITHER,
    PACK,
    CHECK,
    BREAK,
    LOAD,
    STIR,
    RAISE,
    CURE,
    OFF,
    DEROOT;

    /** The word used in files: lower case. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
