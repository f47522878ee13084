package piecewright.oracle;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A plan with all it is judged by.
 *
 * @param now when the rest was planned; empty for a first plan
 * @param done ids of the steps that were done by then
 * @param others hands that other batches need
 */
public record Case(Home home, Norms norms, Told told, Optional<Instant> now, Set<String> done, List<Busy> others) {
    /** One person is at work on another batch. */
    public record Busy(Instant from, Instant until) {}

    /** The steps still to come, in the order told. */
    List<Told.Step> toCome() {
        return told.steps().stream().filter(step -> !done.contains(step.id())).toList();
    }

    boolean first() {
        return now.isEmpty();
    }
}
