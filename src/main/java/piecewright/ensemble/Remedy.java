package piecewright.ensemble;

/** Changes that can make a plan surer. */
public enum Remedy {
    /** Soak 100 g of the lot beforehand: its steep rate is then known. */
    TEST_SOAK,
    /** Weigh the kiln twice early in a run: its air flow is then known. */
    WEIGH_THE_KILN,
    /** Measure the raw grain's moisture instead of guessing it. */
    MEASURE_MOISTURE,
    /** Steep in colder water. */
    CHILLED_WATER,
    /** Grow in another, colder place. */
    COLDER_PLACE,
    /** Get up once in a night. */
    NIGHT_ACT,
    /** Somebody comes home an hour earlier. */
    HOUR_EARLIER
}
