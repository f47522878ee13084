package piecewright.text;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.Locale;
import java.util.Optional;

/** Writes moments as the house's clock shows them. Always the ISO calendar and 24 hours. */
public final class MomentFormat {
    private final ZoneId zone;
    private final DateTimeFormatter moment;
    private final DateTimeFormatter offset;
    private final DateTimeFormatter day;
    private final DateTimeFormatter longDay;
    private final DateTimeFormatter dated;
    private final DateTimeFormatter clock;
    private final DateTimeFormatter clockWithOffset;

    public MomentFormat(ZoneId zone, Locale locale) {
        this.zone = zone;
        this.moment = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", locale).withZone(zone);
        this.offset = DateTimeFormatter.ofPattern("EEE d MMM HH:mm xxx", locale).withZone(zone);
        this.day = DateTimeFormatter.ofPattern("EEE d MMM", locale);
        this.longDay = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", locale);
        this.dated = DateTimeFormatter.ofPattern("EEE d MMM yyyy HH:mm", locale).withZone(zone);
        this.clock = DateTimeFormatter.ofPattern("HH:mm", locale).withZone(zone);
        this.clockWithOffset = DateTimeFormatter.ofPattern("HH:mm xxx", locale).withZone(zone);
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

    /** "Friday 19 March 2027". */
    public String longDay(LocalDate date) {
        return longDay.format(date);
    }

    /** The same, with a word when the clocks change on that day. */
    public String dayHeading(LocalDate date) {
        return clockChange(date)
                .map(change -> Phrases.say(
                        "page.clocks-change",
                        longDay(date),
                        change.getOffsetBefore().getId(),
                        change.getOffsetAfter().getId()))
                .orElseGet(() -> longDay(date));
    }

    /** "Fri 19 Mar 2027 18:00". */
    public String dated(Instant at) {
        return dated.format(at);
    }

    /** "18:00"; on a day on which the clocks change "18:00 +01:00". */
    public String clock(Instant at) {
        return clockChange(at.atZone(zone).toLocalDate()).isPresent() ? clockWithOffset.format(at) : clock.format(at);
    }

    /** The change of the clocks on this day, if there is one. */
    public Optional<ZoneOffsetTransition> clockChange(LocalDate date) {
        Instant begins = date.atStartOfDay(zone).toInstant();
        Instant ends = date.plusDays(1).atStartOfDay(zone).toInstant();
        return Optional.ofNullable(zone.getRules().nextTransition(begins.minusNanos(1)))
                .filter(change -> change.getInstant().isBefore(ends));
    }
}
