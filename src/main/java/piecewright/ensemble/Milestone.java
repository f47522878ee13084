package piecewright.ensemble;

/** Moments of a piece that come by themselves. */
public enum Milestone {
    /** Half the corns have chitted. */
    CHIT,
    /** The acrospire reaches what the plan wants at the end of growth. */
    GROWN,
    /** The hot couch passes 45 °C. */
    CAUGHT,
    /** It is hottest. */
    PEAK,
    /** It is below 45 °C again, by itself or because it was unpacked. */
    DROPPED,
    /** The bed breaks: the exhaust is no longer saturated. */
    BREAK,
    /** The malt leaves the kiln. */
    OFF
}
