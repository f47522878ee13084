package piecewright.house;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;

/** A stretch of one local day, from inclusive to exclusive; midnight as the end means the day's end. */
public record LocalHours(LocalTime fromInclusive, LocalTime untilExclusive) {
    public LocalHours {
        Objects.requireNonNull(fromInclusive);
        Objects.requireNonNull(untilExclusive);
        if (!untilExclusive.equals(LocalTime.MIDNIGHT) && !fromInclusive.isBefore(untilExclusive)) {
            throw new IllegalArgumentException(
                    "hours must end after they start: " + fromInclusive + "-" + untilExclusive);
        }
    }

    /** These hours of one day. */
    public LocalSpan on(LocalDate day) {
        boolean allDay = untilExclusive.equals(LocalTime.MIDNIGHT);
        return new LocalSpan(day.atTime(fromInclusive), (allDay ? day.plusDays(1) : day).atTime(untilExclusive));
    }
}
