package piecewright.ensemble;

/** Figures of the piece; each says its unit. */
public enum Figure {
    /** Moisture as the steep ends, wet basis, share of one. */
    STEEP_OUT_FRACTION,
    /** Mean acrospire at the end of growth, share of the corn. */
    ACROSPIRE_FRACTION,
    /** The hottest a hot couch gets, °C. */
    COUCH_PEAK_C,
    /** Couch index as the couch is broken, hours at 48 °C and 40 %. */
    COUCH_INDEX_HOURS,
    /** Minutes a stew lies under its cover. */
    STEW_MINUTES,
    /** Minutes a load is in the oven of its roast. */
    ROAST_MINUTES,
    /** The middle of the layer as the roast ends, °C. */
    ROASTED_C,
    /** Moisture off the kiln, or after the roast, wet basis, share of one. */
    END_MOISTURE_FRACTION,
    /** Colour, EBC. */
    COLOUR_EBC,
    /** Share of the green malt's diastatic power that survives; roasts leave none. */
    DIASTATIC_FRACTION,
    /** Malt from corns that grew, kg. */
    MALT_KG,
    /** What the scale shows, kg. */
    SCALE_MALT_KG
}
