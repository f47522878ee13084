package piecewright.plan;

import java.time.Instant;
import java.util.List;
import java.util.Map;

/**
 * What is known to have happened to a piece beside its acts.
 *
 * @param readings in time order
 * @param sprinkledKg water sprinkled at acts, by act id, kg; an act not named sprinkles what its style asks
 * @param coldSpells when the kiln had no heat though it should, in time order, not overlapping
 */
public record Found(List<Reading> readings, Map<String, Double> sprinkledKg, List<ColdSpell> coldSpells) {
    public Found {
        coldSpells = List.copyOf(coldSpells);
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
        return new Found(List.of(), Map.of(), List.of());
    }

    /** No heat from one instant until another, from before until. */
    public record ColdSpell(Instant from, Instant until) {}

    public Found withReadings(List<Reading> changed) {
        return new Found(changed, sprinkledKg, coldSpells);
    }
}
