package piecewright.plan;

/** What is done to find something out before the first act. */
public enum CheckKind {
    /** Corns laid out to germinate. */
    LAY_OUT(20),
    /** Those that germinated counted. */
    COUNT(15),
    /** A weighed sample, crushed, put into a hot oven. */
    DRY_IN(15),
    /** The dried sample weighed. */
    DRY_OUT(5),
    /** A sample in a net put under water. */
    TEST_SOAK(10),
    /** The sample drained and weighed. */
    TEST_WEIGH(25),
    /** Warm water into the insulated box. */
    BOX_FILL(20),
    /** Its temperature read again. */
    BOX_READ(10),
    /** The empty oven held against a thermometer. */
    OVEN(60);

    private final int workMinutes;

    CheckKind(int workMinutes) {
        this.workMinutes = workMinutes;
    }

    /** Minutes somebody is busy. */
    public int workMinutes() {
        return workMinutes;
    }

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
