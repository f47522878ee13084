package piecewright.ensemble;

import java.util.Objects;
import java.util.Optional;

/**
 * Whether the plan holds.
 *
 * @param softFraction chance that every act stays within its soft window
 * @param hardFraction chance that none passes its hard limit
 * @param weakest the act most likely to leave its soft window; empty when none ever does
 */
public record Verdict(double softFraction, double hardFraction, Optional<Weakest> weakest) {
    public Verdict {
        Objects.requireNonNull(weakest);
    }

    /**
     * @param fault what most often happens to it
     * @param fraction chance that it leaves its soft window
     */
    public record Weakest(String actId, Fault fault, double fraction) {
        public Weakest {
            Objects.requireNonNull(actId);
            Objects.requireNonNull(fault);
        }
    }
}
