package piecewright.journal;

/** Where a thermometer was held. */
public enum Spot {
    /** The middle of the heap or bed: the warmest. */
    CORE,
    EDGE,
    TOP,
    BOTTOM,
    /** Somewhere in the grain; nobody said where. */
    GRAIN,
    WATER,
    /** The room. */
    AIR,
    /** The air below the kiln's bed. */
    AIR_ON,
    /** The air that leaves the kiln. */
    AIR_OFF;

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }

    /** Whether it is the grain's own temperature. */
    public boolean inGrain() {
        return this != WATER && this != AIR && this != AIR_ON && this != AIR_OFF;
    }
}
