package piecewright.ensemble;

/** Moments of a piece that come by themselves. A couched plan adds its own. */
public enum Milestone {
    /** Half the corns have chitted. */
    CHIT,
    /** The acrospire reaches what the plan wants at the end of growth. */
    GROWN,
    /** The bed breaks: the exhaust is no longer saturated. */
    BREAK,
    /** The malt leaves the kiln. */
    OFF
}
