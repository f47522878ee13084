package piecewright.oracle;

/**
 * What a style's file asks of the grain.
 *
 * @param warmestGrainC warmest the bed may be while it grows, °C
 * @param leastAcrospire least mean acrospire at which growth may end, share of the corn
 * @param leastSteepOut least moisture after the steep, wet basis
 */
public record Norms(double warmestGrainC, double leastAcrospire, double leastSteepOut) {}
