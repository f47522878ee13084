package piecewright.calendar;

/** Whether an event keeps the person busy. */
public enum Attention {
    /** Somebody works: shown as busy time. */
    HANDS_ON,
    /** Somebody must stay near: shown as busy time. */
    STAYING,
    /** The grain works by itself: shown as free time, never with an alarm. */
    PASSIVE
}
