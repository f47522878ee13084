package piecewright.learn;

import java.util.List;
import java.util.Objects;
import piecewright.belief.Belief;
import piecewright.belief.Interval;

/** What was believed before, what is believed now, and how each observation was taken. */
public record Estimate(Belief prior, Belief posterior, List<Judged> observations) {
    public Estimate {
        Objects.requireNonNull(prior);
        Objects.requireNonNull(posterior);
        observations = List.copyOf(observations);
    }

    /**
     * @param expected what the posterior foretells in its place, P10 to P90, without the error of reading
     */
    public record Judged(Observation observation, Interval expected, Verdict verdict) {
        public Judged {
            Objects.requireNonNull(observation);
            Objects.requireNonNull(expected);
            Objects.requireNonNull(verdict);
        }
    }
}
