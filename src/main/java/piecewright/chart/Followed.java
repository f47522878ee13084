package piecewright.chart;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.plan.Plan;

/**
 * What became of a plan so far, to be drawn over it.
 *
 * @param measured what was found, in time order
 * @param before the same acts as they were forecast before anything was measured; drawn as a thin dashed line
 * @param now until when the piece was followed
 */
public record Followed(List<Measured> measured, Optional<Plan> before, Optional<Instant> now) {
    public Followed {
        measured = List.copyOf(measured);
        Objects.requireNonNull(before);
        Objects.requireNonNull(now);
    }

    /** A plan that nobody began. */
    public static Followed nothing() {
        return new Followed(List.of(), Optional.empty(), Optional.empty());
    }
}
