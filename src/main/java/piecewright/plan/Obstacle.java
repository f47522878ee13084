package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import piecewright.grain.GrainKind;

/** Why there is no plan: figures only; the sentences are made in {@code text}. */
public sealed interface Obstacle {
    /** Whether a smaller piece would pass it. */
    default boolean ofSize() {
        return this instanceof VesselTooSmall
                || this instanceof BedTooDeep
                || this instanceof HeaterTooSmall
                || this instanceof NeverDry
                || this instanceof BoxTooSmall
                || this instanceof StewTooDeep
                || this instanceof TooManyLoads;
    }

    /** Nobody is there for this act between these instants, whatever is done before it. */
    record NobodyThere(String actId, Instant earliest, Instant latest) implements Obstacle {}

    /** Every act has its hours, but the piece cannot be rested and ready by then; short by so much at least. */
    record TooSoon(Instant readyBy, Duration shortBy) implements Obstacle {}

    /** No run of acts fits; the furthest any got was this act. */
    record NothingFits(String actId, Instant reached) implements Obstacle {}

    /** On the floor it would get so warm, °C, though the style likes no more than its warmest; from then on too warm. */
    record BedTooWarm(String place, double expectedC, double warmestC, Instant from) implements Obstacle {}

    /** Wet grain would freeze there: so cold, °C, and from when on. */
    record WouldFreeze(String place, double grainC, Instant from) implements Obstacle {}

    /** Looking was ended before every combination of kit was planned with; so many were. */
    record NotAllTried(int kits) implements Obstacle {}

    /** It would fit if these batches did not need the hands or the kit. */
    record HeldByOthers(List<String> batches) implements Obstacle {
        public HeldByOthers {
            batches = List.copyOf(batches);
        }

        static HeldByOthers of(List<Booking> bookings) {
            return new HeldByOthers(bookings.stream().map(Booking::batch).toList());
        }
    }

    /** Treated seed is poison: no plan, no override. */
    record TreatedSeed(String lot) implements Obstacle {}

    /** Too few corns live: the dead ones rot. */
    record TooFewGrow(String lot, double energyFraction, double neededFraction) implements Obstacle {}

    record GrainNotForStyle(String style, GrainKind grain) implements Obstacle {}

    /** No vessel holds the swollen grain with its water. */
    record VesselTooSmall(double neededL, double largestL) implements Obstacle {}

    /** The trays would lie deeper than this grain may. */
    record BedTooDeep(double depthCm, double deepestCm, double areaM2) implements Obstacle {}

    /**
     * The style does not come to the colour wished for; the nearest it does come to with this kit.
     *
     * @param reaching titles of the styles that reach it with this kit
     */
    record ColourOutOfReach(String style, double wantedEbc, double nearestEbc, List<String> reaching)
            implements Obstacle {
        public ColourOutOfReach {
            reaching = List.copyOf(reaching);
        }
    }

    /** No heater reaches or may reach the temperature. */
    record NoHeater(double neededC, double hottestC) implements Obstacle {}

    /** The heaters' trays hold less green malt than this piece. */
    record HeaterTooSmall(double neededM2, double largestM2) implements Obstacle {}

    /** No oven of the house holds the temperature of the stew or roast. */
    record NoOven(double neededC, double hottestC) implements Obstacle {}

    /** The style roasts hotter than any kitchen may: no plan, no override. */
    record RoastTooHot(String style, double neededC, double ceilingC) implements Obstacle {}

    /** An oven this much off its dial might pass the ceiling of a roast. */
    record OvenUnsure(double neededC, double errorK, double ceilingC) implements Obstacle {}

    /** The green malt would lie deeper in the oven than it may while it is stewed. */
    record StewTooDeep(double depthCm, double deepestCm, double areaM2) implements Obstacle {}

    /** The oven would have to be filled more often than anybody does. */
    record TooManyLoads(int loads, int most, double loadKg) implements Obstacle {}

    /** Nobody has so many hours in one go as this attended act takes. */
    record BlockTooLong(String actId, Duration needed, Duration longest) implements Obstacle {}

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

    /** Wet grain cannot have waited so long after the last step of its plan. */
    record LongAfterPlan(Instant last) implements Obstacle {}
}
