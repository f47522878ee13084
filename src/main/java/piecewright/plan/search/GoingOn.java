package piecewright.plan.search;

import java.time.Instant;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * What a search has to go on with.
 *
 * @param piece the piece under way; empty when its grain is still dry
 * @param published when the acts stand that somebody counts on, by id; a search pays for moving them
 */
public record GoingOn(Optional<UnderWay> piece, Map<String, Instant> published) {
    public GoingOn {
        Objects.requireNonNull(piece);
        published = Map.copyOf(published);
    }

    /** Nothing was done and nobody counts on anything. */
    public static GoingOn afresh() {
        return new GoingOn(Optional.empty(), Map.of());
    }
}
