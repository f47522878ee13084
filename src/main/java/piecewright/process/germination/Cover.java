package piecewright.process.germination;

/** What lies over a growing bed. */
public enum Cover {
    /** A damp cloth. */
    DAMP_CLOTH,
    /** Nothing; for beds up to about 10 cm. */
    UNCOVERED
}
