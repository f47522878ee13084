package piecewright.oracle;

import java.time.Instant;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A plan as it is told to people.
 *
 * @param rawKg grain as bought, kg
 * @param usefulKg malt from living corns, kg
 * @param scaleKg malt on the scale, kg
 */
public record Told(
        Instant readyAt, double rawKg, double usefulKg, double scaleKg, List<Step> steps, List<Stretch> phases) {
    /**
     * One step.
     *
     * @param setC heat or water set at it, °C
     * @param hottestC the hottest an attended block sets inside it, °C
     * @param moisture wet basis
     */
    public record Step(
            String id,
            String kind,
            Instant at,
            int minutes,
            String place,
            OptionalDouble setC,
            OptionalDouble hottestC,
            Found expect) {
        public Instant until() {
            return at.plusSeconds(60L * minutes);
        }

        public boolean is(String... kinds) {
            return List.of(kinds).contains(kind);
        }
    }

    /** What is told to be found at a step. */
    public record Found(double massKg, double moisture, double grainC, OptionalDouble acrospire) {
        public double dryKg() {
            return massKg * (1 - moisture);
        }
    }

    /** What the grain does by itself. */
    public record Stretch(String id, String kind, Instant from, Instant until) {}
}
