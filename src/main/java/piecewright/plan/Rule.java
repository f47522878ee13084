package piecewright.plan;

/** What a plan is charged for, by name: the rules of {@link Rules}, {@link CouchRules} and {@link HeapRules}. */
public enum Rule {
    /** Minutes of work. */
    WORK,
    /** An unsociable hour, or a night. */
    HOUR,
    /** An act put elsewhere than where somebody expects it. */
    MOVED,
    /** Time passing: a longer piece is a nuisance. */
    TIME,
    SOAK_LENGTH,
    FIRST_SOAK_WETNESS,
    CHITTED_UNDER_WATER,
    REST_LENGTH,
    STEEP_OUT_MOISTURE,
    CASTING,
    HEAP_LENGTH,
    LOOKS,
    TURNINGS,
    GROWTH,
    WITHER_LENGTH,
    PACKING_MOISTURE,
    CHECKS,
    COUCH_INDEX,
    LOADING,
    STIRRINGS,
    KILN_WAIT,
    CURE_LENGTH,
    COLOUR,
    DEROOTING,
    ROAST_WAIT,
    /** Rest lost, or days idle, before the malt is wanted. */
    READY_BY;

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
