package piecewright.process.couch;

/** Where the thermometer sticks in the pile, and what that says about the pile's mean. */
public enum CouchProbe {
    MIDDLE(CouchProbe.MIDDLE_OFFSET_K),
    BOTTOM(CouchProbe.BOTTOM_OFFSET_K);

    /** Judgement: a layered model of the pile runs 1 K over its mean in the middle. */
    private static final double MIDDLE_OFFSET_K = -1;
    /** Judgement: the same model, near the bottom. */
    private static final double BOTTOM_OFFSET_K = 1;

    private final double offsetK;

    CouchProbe(double offsetK) {
        this.offsetK = offsetK;
    }

    /** Mean of the pile behind a reading, °C. */
    public double meanC(double readingC) {
        return readingC + offsetK;
    }

    /** What a thermometer there reads at that mean of the pile, °C. */
    public double readingC(double meanC) {
        return meanC - offsetK;
    }
}
