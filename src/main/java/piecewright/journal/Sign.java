package piecewright.journal;

/** What can be seen, smelt or happen that changes what to do next, or reassures. */
public enum Sign {
    /** Cucumber, apples, fresh: as it should be. */
    SWEET_SMELL,
    /** The steep water or the grain smells or tastes sour. */
    SOUR,
    /** Foul or rotten. */
    FOUL,
    MUSTY,
    /** Corns exude a milky juice when squeezed. */
    MILKY_CORNS,
    /** White or grey fuzz on corns. */
    FUZZ,
    /** Pink or orange corns or patches. */
    PINK,
    /** A film of water on glossy grain. */
    WET_FILM,
    /** Roots have lost their gloss, or the bed is dry. */
    DRY_ROOTS,
    /** Roots are felted together. */
    MATTED,
    /** The shoot is out of the husk on many corns. */
    OVERGROWN,
    UNEVEN,
    /** The bed lies loose and falls apart: free drying is over. */
    BROKE,
    /** The heap stays cold. */
    NOT_HEATING,
    /** The kiln is in use, or not fit for use, when it is wanted. */
    KILN_BUSY,
    POWER_OUT,
    POWER_BACK,
    /** Anything else. */
    OTHER;

    /** The word used in files: lower case with hyphens. */
    public String key() {
        return name().toLowerCase(java.util.Locale.ROOT).replace('_', '-');
    }
}
