package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import piecewright.grain.GrainKind;

/** Why there is no plan: figures only; the sentences are made in {@code text}. */
public sealed interface Obstacle {
    /** Nobody is there for this act between these instants, whatever is done before it. */
    record NobodyThere(String actId, Instant earliest, Instant latest) implements Obstacle {}

    /** Every act has its hours, but the piece cannot be rested and ready by then; short by so much at least. */
    record TooSoon(Instant readyBy, Duration shortBy) implements Obstacle {}

    /** No run of acts fits; the furthest any got was this act. */
    record NothingFits(String actId, Instant reached) implements Obstacle {}

    /** Treated seed is poison: no plan, no override. */
    record TreatedSeed(String lot) implements Obstacle {}

    /** Too few corns live: the dead ones rot. */
    record TooFewGrow(String lot, double energyFraction, double neededFraction) implements Obstacle {}

    record GrainNotForStyle(String style, GrainKind grain) implements Obstacle {}

    /** No vessel holds the swollen grain with its water. */
    record VesselTooSmall(double neededL, double largestL) implements Obstacle {}

    /** The trays would lie deeper than this grain may. */
    record BedTooDeep(double depthCm, double deepestCm, double areaM2) implements Obstacle {}

    /** No heater reaches or may reach the temperature. */
    record NoHeater(double neededC, double hottestC) implements Obstacle {}

    /** The heaters' trays hold less green malt than this piece. */
    record HeaterTooSmall(double neededM2, double largestM2) implements Obstacle {}

    /** The air this heater moves would never dry the piece that far. */
    record NeverDry(double airOnC, double reachedFraction) implements Obstacle {}

    /** The style heats itself in an insulated box, and the house has none. */
    record NoBox() implements Obstacle {}

    /** No insulated box holds the piece. */
    record BoxTooSmall(double neededL, double largestL) implements Obstacle {}

    /** The pile would never heat itself: too small for its box and the air around it. */
    record CouchTooSmall(double grainKg, double airC, Remedies remedies) implements Obstacle {
        /**
         * What alone would make it heat for certain; NaN where nothing within reason would.
         *
         * @param grainKg raw grain in the same box
         * @param airC air around the same box
         * @param boxWPerK loss of the box, at 4.5 kg
         * @param tightWPerK loss a better box may have
         */
        public record Remedies(double grainKg, double airC, double boxWPerK, double tightWPerK) {}
    }
}
