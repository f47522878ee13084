package piecewright.history;

/** What an entry of a log counts as. */
public enum Fate {
    /** It tells of an act that was done, or says the same again. */
    DONE,
    /** A figure was found, and is believed. */
    MEASURED,
    /** A heater or its vents were set. */
    SET,
    /** Something was seen, smelt or happened. */
    SEEN,
    /** Words, a vessel, or what was read of grain that was still dry: kept, and nothing follows. */
    NOTED,
    /** It cannot be true as it stands. */
    CONTRADICTED,
    /** Struck out, or said otherwise by a later entry. */
    STRUCK,
    /** It corrects another entry, whose number carries what is held now. */
    CORRECTION,
    /** Written after the instant that is asked about. */
    LATER
}
