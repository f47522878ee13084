package piecewright.replan;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * An act to come that stands elsewhere in the new plan, in time or in the house, or that only one of the two plans has.
 *
 * @param from where it stood; empty for a new act
 * @param to where it stands; the same instant where only its place changes; empty for an act that is dropped
 * @param places the place or kit it changes; empty where it stays in its own
 */
public record Move(
        String actId, Optional<Instant> from, Optional<Instant> to, Optional<Places> places, Because because) {
    public Move {
        Objects.requireNonNull(actId);
        Objects.requireNonNull(places);
        Objects.requireNonNull(from);
        Objects.requireNonNull(to);
        Objects.requireNonNull(because);
        if (from.isEmpty() && to.isEmpty()) throw new IllegalArgumentException("an act must be in one of the plans");
    }

    /** The place or kit of an act by name, as it was planned and as it is now. */
    public record Places(String from, String to) {
        public Places {
            Objects.requireNonNull(from);
            Objects.requireNonNull(to);
        }
    }

    /** Why it moved. */
    public sealed interface Because {
        /** What this entry of the journal tells: the one that departs most from the plan. */
        record Entered(int entry) implements Because {}

        /** Its time passed and nobody wrote down that it was done. */
        record NotRecorded(String actId) implements Because {}

        /** Somebody is away, or hours changed, where acts stood. */
        record Hours(String actId) implements Because {}

        /** Its place or kit is gone, taken or too small. */
        record NoRoom(String place) implements Because {}

        /** Nothing departs: the rest fits better so. */
        record Better() implements Because {}
    }
}
