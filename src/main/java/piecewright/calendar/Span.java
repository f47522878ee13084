package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;

/**
 * A stretch of time in a calendar, whole seconds, from start inclusive to end exclusive, in the years 1900 to 9998 UTC.
 */
public record Span(Instant startsAt, Instant endsAt) {
    private static final Instant FIRST = Instant.parse("1900-01-01T00:00:00Z");
    private static final Instant LAST = Instant.parse("9999-01-01T00:00:00Z");

    public Span {
        if (!startsAt.isBefore(endsAt)) {
            throw new IllegalArgumentException("startsAt must be before endsAt: " + startsAt + ", " + endsAt);
        }
        if (startsAt.getNano() != 0 || endsAt.getNano() != 0) {
            throw new IllegalArgumentException("need whole seconds: " + startsAt + ", " + endsAt);
        }
        if (startsAt.isBefore(FIRST) || endsAt.isAfter(LAST)) {
            throw new IllegalArgumentException("need years 1900 to 9998: " + startsAt + ", " + endsAt);
        }
    }

    /** From start to end, cut to whole seconds; the end moved later if the stretch would be shorter than the least. */
    public static Span atLeast(Duration least, Instant startsAt, Instant endsAt) {
        Instant start = startsAt.truncatedTo(ChronoUnit.SECONDS);
        Instant end = endsAt.truncatedTo(ChronoUnit.SECONDS);
        Instant earliestEnd = start.plus(least);
        return new Span(start, end.isBefore(earliestEnd) ? earliestEnd : end);
    }

    public Duration length() {
        return Duration.between(startsAt, endsAt);
    }
}
