package piecewright.replan;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * An act to come that stands elsewhere in the new plan, or that only one of the two plans has.
 *
 * @param from where it stood; empty for a new act
 * @param to where it stands; empty for an act that is dropped
 */
public record Move(String actId, Optional<Instant> from, Optional<Instant> to, Because because) {
    public Move {
        Objects.requireNonNull(actId);
        Objects.requireNonNull(from);
        Objects.requireNonNull(to);
        Objects.requireNonNull(because);
        if (from.isEmpty() && to.isEmpty()) throw new IllegalArgumentException("an act must be in one of the plans");
    }

    /** Why it moved. */
    public sealed interface Because {
        /** What this entry of the journal tells: the one that departs most from the plan. */
        record Entered(int entry) implements Because {}

        /** Its time passed and nobody wrote down that it was done. */
        record NotRecorded(String actId) implements Because {}

        /** Somebody is away, or hours changed, where acts stood. */
        record Hours(String actId) implements Because {}

        /** Nothing departs: the rest fits better so. */
        record Better() implements Because {}
    }
}
