package piecewright.assess;

/** What to do with a lot; a later one outranks an earlier one. */
public enum Verdict {
    MALT_IT,
    ONLY_MINOR_SHARE,
    WAIT_AND_RETEST,
    DO_NOT_MALT
}
