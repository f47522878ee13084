package piecewright.house;

import java.util.Map;

/**
 * How this kit differs from the usual, where batches taught it; by the names of heaters, boxes, and of places with a
 * floor or trays. What a name is missing from is as usual.
 *
 * @param dialOffsetsK how much hotter a heater's air is than its dial says, K
 * @param colourRatios multipliers of the rate at which malt colours in a heater, above 0
 * @param floorDryingRatios multipliers of the water a bed loses at a place, above 0
 * @param couchHeatRatios multipliers of the heat of a couch in a box, above 0
 */
public record KitTraits(
        Map<String, Double> dialOffsetsK,
        Map<String, Double> colourRatios,
        Map<String, Double> floorDryingRatios,
        Map<String, Double> couchHeatRatios) {
    public KitTraits {
        dialOffsetsK = Map.copyOf(dialOffsetsK);
        colourRatios = Map.copyOf(colourRatios);
        floorDryingRatios = Map.copyOf(floorDryingRatios);
        couchHeatRatios = Map.copyOf(couchHeatRatios);
    }

    /** Nothing learned yet. */
    public static KitTraits unknown() {
        return new KitTraits(Map.of(), Map.of(), Map.of(), Map.of());
    }
}
