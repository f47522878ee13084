package piecewright.plan;

/** A danger that stands at an act. The words are in {@code text}. */
public enum Caution {
    UNKNOWN_TREATMENT,
    MOULD,
    ERGOT,
    RAW_GREEN_MALT,
    CARBON_DIOXIDE,
    LIFTING,
    ELECTRICITY_NEAR_WET_GRAIN,
    FIRE,
    COMBUSTION_GASES,
    HOT_SURFACES,
    DUST,
    ALLERGENS,
    PACKS_DENSE,
    COUCH_GAS
}
