package piecewright.grain;

/** Whether the seed was dressed with chemicals. Treated seed is never planned. */
public enum Treatment {
    UNTREATED,
    TREATED,
    UNKNOWN
}
