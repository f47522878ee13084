package piecewright.plan;

import java.util.List;
import java.util.Map;

/**
 * What is known to have happened to a piece beside its acts.
 *
 * @param readings in time order
 * @param sprinkledKg water sprinkled at acts, by act id, kg; an act not named sprinkles what its style asks
 */
public record Found(List<Reading> readings, Map<String, Double> sprinkledKg) {
    public Found {
        readings = List.copyOf(readings);
        sprinkledKg = Map.copyOf(sprinkledKg);
        for (int i = 1; i < readings.size(); i++) {
            if (readings.get(i).at().isBefore(readings.get(i - 1).at())) {
                throw new IllegalArgumentException(
                        "readings must be in time order: " + readings.get(i).at());
            }
        }
    }

    public static Found nothing() {
        return new Found(List.of(), Map.of());
    }
}
