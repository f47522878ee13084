package piecewright.plan;

import java.time.Instant;
import java.util.Objects;
import piecewright.quantity.Moisture;

/** A passive stretch between two acts, from inclusive to exclusive; id logical as an act's. */
public record Phase(
        String id,
        PhaseKind kind,
        Instant from,
        Instant until,
        String place,
        Moisture moistureFrom,
        Moisture moistureUntil) {
    public Phase {
        Objects.requireNonNull(id);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(place);
        Objects.requireNonNull(moistureFrom);
        Objects.requireNonNull(moistureUntil);
        if (!from.isBefore(until)) {
            throw new IllegalArgumentException("from must be before until: " + from + ", " + until);
        }
    }
}
