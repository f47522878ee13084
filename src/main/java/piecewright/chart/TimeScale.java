package piecewright.chart;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;

/** Where instants lie across a picture. */
record TimeScale(Instant from, Instant until, double leftX, double rightX) {
    TimeScale {
        if (!from.isBefore(until)) throw new IllegalArgumentException("from must be before until: " + from);
    }

    double x(Instant at) {
        double share = (double) Duration.between(from, at).toMillis()
                / Duration.between(from, until).toMillis();
        return leftX + share * (rightX - leftX);
    }

    boolean shows(Instant at) {
        return !at.isBefore(from) && !at.isAfter(until);
    }

    Instant clipped(Instant at) {
        return at.isBefore(from) ? from : at.isAfter(until) ? until : at;
    }

    /** Every day of which some part shows. */
    List<LocalDate> days(ZoneId zone) {
        LocalDate first = from.atZone(zone).toLocalDate();
        return first.datesUntil(until.atZone(zone).toLocalDate().plusDays(1)).toList();
    }
}
