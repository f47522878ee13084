package piecewright.learn;

/** How a piece was kept when something was read. */
enum Keeping {
    STEEPING,
    GROWING,
    COUCHED,
    HEATED,
    DONE
}
