package piecewright.grain;

/** The grains that can be planned. A key is what files carry. */
public enum GrainKind {
    BARLEY("barley"),
    HULLLESS_BARLEY("hull-less barley"),
    WHEAT("wheat"),
    RYE("rye"),
    OATS("oats"),
    SPELT("spelt");

    private final String key;

    GrainKind(String key) {
        this.key = key;
    }

    /** The word used in files and shown to people. */
    public String key() {
        return key;
    }
}
