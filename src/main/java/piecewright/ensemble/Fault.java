package piecewright.ensemble;

/** How an act can fail to stay in its window. */
public enum Fault {
    /** It comes too late after what went before, or too late for the plan. */
    LATE,
    /** It has to come too early. */
    EARLY,
    /** The malt or grain is wetter than the style allows. */
    TOO_WET,
    /** It is drier than the style allows. */
    TOO_DRY,
    /** It got warmer than the style allows. */
    TOO_WARM,
    /** It stays too cold to become what the style wants. */
    TOO_COLD,
    /** Too few corns have chitted or grown far enough. */
    UNDERGROWN,
    /** They have grown too far. */
    OVERGROWN
}
