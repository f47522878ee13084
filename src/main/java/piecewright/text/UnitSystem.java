package piecewright.text;

/** The family of units a person thinks in. */
public enum UnitSystem {
    /** kg, g, °C, L, cm. */
    METRIC,
    /** lb and oz, °F, US gallons, inches. */
    US
}
