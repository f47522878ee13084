package piecewright.house;

import java.util.List;
import java.util.Objects;

/**
 * What there is to malt with.
 *
 * @param learned what earlier batches taught about it
 */
public record Kit(
        List<Vessel> vessels,
        List<Trays> trays,
        List<InsulatedBox> boxes,
        List<Heater> heaters,
        Scale scale,
        KitTraits learned) {
    public Kit {
        vessels = List.copyOf(vessels);
        trays = List.copyOf(trays);
        boxes = List.copyOf(boxes);
        heaters = List.copyOf(heaters);
        Objects.requireNonNull(scale);
        Objects.requireNonNull(learned);
    }

    /** Kit that was never used. */
    public Kit(List<Vessel> vessels, List<Trays> trays, List<InsulatedBox> boxes, List<Heater> heaters, Scale scale) {
        this(vessels, trays, boxes, heaters, scale, KitTraits.unknown());
    }
}
