package piecewright.plan;

import java.time.Instant;
import java.util.Objects;
import piecewright.quantity.Moisture;

/**
 * A stretch between two acts in which the grain works by itself, from inclusive to exclusive.
 *
 * @param id logical as an act's
 * @param attended somebody must stay near until it is over: heat is on that may not be left
 */
public record Phase(
        String id,
        PhaseKind kind,
        Instant from,
        Instant until,
        String place,
        Moisture moistureFrom,
        Moisture moistureUntil,
        boolean attended) {
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

    /** A stretch in which nobody need be near. */
    public Phase(
            String id,
            PhaseKind kind,
            Instant from,
            Instant until,
            String place,
            Moisture moistureFrom,
            Moisture moistureUntil) {
        this(id, kind, from, until, place, moistureFrom, moistureUntil, false);
    }

    /** The same at another time. */
    public Phase between(Instant changedFrom, Instant changedUntil) {
        return new Phase(id, kind, changedFrom, changedUntil, place, moistureFrom, moistureUntil, attended);
    }
}
