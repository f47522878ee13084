package piecewright.plan;

/** The hands-on acts of malting. */
public enum ActKind {
    SOAK,
    DRAIN,
    HEAP,
    LOOK,
    FLOOR,
    TURN,
    SPRINKLE,
    WITHER,
    PACK,
    CHECK,
    BREAK,
    STEW,
    LOAD,
    STIR,
    RAISE,
    LOWER,
    CURE,
    OFF,
    DEROOT,
    ROAST;

    /** The word used in files: lower case. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Whether a thermometer goes into a heap at it. */
    public boolean looksIntoAHeap() {
        return this == LOOK || this == CHECK;
    }
}
