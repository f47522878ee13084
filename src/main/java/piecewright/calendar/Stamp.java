package piecewright.calendar;

import java.time.Instant;

/**
 * What tells calendars which copy of an event is newer.
 *
 * @param sequence 0 when first written, one more whenever time or status changed
 * @param created whole seconds
 * @param lastModified whole seconds, strictly later whenever anything changed
 */
public record Stamp(int sequence, Instant created, Instant lastModified) {
    public Stamp {
        if (sequence < 0) throw new IllegalArgumentException("sequence must be 0 or more: " + sequence);
        if (created.isAfter(lastModified)) {
            throw new IllegalArgumentException(
                    "created must not be after lastModified: " + created + ", " + lastModified);
        }
        if (created.getNano() != 0 || lastModified.getNano() != 0) {
            throw new IllegalArgumentException("need whole seconds: " + created + ", " + lastModified);
        }
    }

    /** The stamp of a changed text: later even if the clock went back. */
    Stamp reworded(Instant nowSeconds) {
        Instant next = lastModified.plusSeconds(1);
        return new Stamp(sequence, created, nowSeconds.isAfter(next) ? nowSeconds : next);
    }

    /** The stamp of a changed time or status. */
    Stamp rescheduled(Instant nowSeconds) {
        Stamp later = reworded(nowSeconds);
        return new Stamp(sequence == Integer.MAX_VALUE ? sequence : sequence + 1, created, later.lastModified());
    }
}
