package piecewright.process.steep;

/** How the steeping grain stands towards the air around it. */
public enum Standing {
    /** In a plain bucket or tub. */
    BUCKET,
    /** In a tub within an insulated box. */
    INSULATED,
    /** Drained and spread 5 cm deep or less; air rests only. */
    SPREAD
}
