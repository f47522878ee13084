package piecewright.house;

import java.util.List;
import java.util.Objects;

/** What there is to malt with. */
public record Kit(
        List<Vessel> vessels, List<Trays> trays, List<InsulatedBox> boxes, List<Heater> heaters, Scale scale) {
    public Kit {
        vessels = List.copyOf(vessels);
        trays = List.copyOf(trays);
        boxes = List.copyOf(boxes);
        heaters = List.copyOf(heaters);
        Objects.requireNonNull(scale);
    }
}
