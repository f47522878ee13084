package piecewright.text;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Writes moments as the house's clock shows them. Always the ISO calendar and 24 hours. */
public final class MomentFormat {
    private final ZoneId zone;
    private final DateTimeFormatter moment;
    private final DateTimeFormatter offset;
    private final DateTimeFormatter day;

    public MomentFormat(ZoneId zone, Locale locale) {
        this.zone = zone;
        this.moment = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", locale).withZone(zone);
        this.offset = DateTimeFormatter.ofPattern("EEE d MMM HH:mm xxx", locale).withZone(zone);
        this.day = DateTimeFormatter.ofPattern("EEE d MMM", locale);
    }

    public ZoneId zone() {
        return zone;
    }

    /** "Fri 19 Mar 18:00". */
    public String moment(Instant at) {
        return moment.format(at);
    }

    /** "Fri 19 Mar 18:00 +01:00", for the night the clocks change. */
    public String momentWithOffset(Instant at) {
        return offset.format(at);
    }

    /** "Fri 19 Mar". */
    public String day(LocalDate date) {
        return day.format(date);
    }
}
