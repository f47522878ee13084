package piecewright.ensemble;

/** Figures of the finished piece; each says its unit. A couched plan adds its own. */
public enum Figure {
    /** Moisture as the steep ends, wet basis, share of one. */
    STEEP_OUT_FRACTION,
    /** Mean acrospire at the end of growth, share of the corn. */
    ACROSPIRE_FRACTION,
    /** Moisture off the kiln, wet basis, share of one. */
    END_MOISTURE_FRACTION,
    /** Colour, EBC. */
    COLOUR_EBC,
    /** Malt from corns that grew, kg. */
    MALT_KG,
    /** What the scale shows, kg. */
    SCALE_MALT_KG
}
