package piecewright.style;

/** What a style leaves free to make its colour. */
public enum ColourLever {
    CURE_HOURS,
    COUCH_HOURS,
    ROAST_MINUTES;

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
