package piecewright.history;

/** How a batch was kept when something was read. */
public enum Keeping {
    STEEPING,
    GROWING,
    COUCHED,
    HEATED,
    DONE
}
