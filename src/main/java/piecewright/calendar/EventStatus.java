package piecewright.calendar;

/** The two states an event of ours may be in. */
public enum EventStatus {
    CONFIRMED,
    CANCELLED
}
