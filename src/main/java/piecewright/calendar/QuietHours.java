package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.zone.ZoneOffsetTransition;
import java.util.List;
import java.util.Optional;

/**
 * Hours of the day in which no alarm may ring, from inclusive to until exclusive, over midnight if from is later. An
 * alarm that would ring inside is brought forward to the minute before they begin, so that an early act is announced
 * the evening before rather than not at all; should that be a day or more before the start, it waits until they end.
 */
public record QuietHours(LocalTime from, LocalTime until) {
    public QuietHours {
        if (from.equals(until)) throw new IllegalArgumentException("from and until must differ: " + from);
    }

    /** The alarms of an event that starts then, moved out of these hours; two that fall together become one. */
    List<Duration> spare(Instant startsAt, List<Duration> alarms, ZoneId zone) {
        return alarms.stream()
                .map(alarm -> spare(startsAt, alarm, zone))
                .distinct()
                .toList();
    }

    private Duration spare(Instant startsAt, Duration alarm, ZoneId zone) {
        ZonedDateTime rings = startsAt.minus(alarm).atZone(zone);
        if (!covers(rings.toLocalTime())) return alarm;
        LocalDateTime begins = rings.toLocalDate().atTime(from);
        if (begins.isAfter(rings.toLocalDateTime())) begins = begins.minusDays(1);
        LocalDateTime before = begins.minusMinutes(1);
        Duration lead = skipped(before, zone)
                .map(jump -> lead(jump.minus(Duration.ofMinutes(1)), startsAt))
                .orElseGet(() -> lead(before.atZone(zone).toInstant(), startsAt));
        if (lead.toDays() < 1) return lead;
        LocalDateTime ends = begins.toLocalDate().atTime(until);
        LocalDateTime after = ends.isAfter(begins) ? ends : ends.plusDays(1);
        return lead(skipped(after, zone).orElseGet(() -> after.atZone(zone).toInstant()), startsAt);
    }

    /** The instant at which the clock jumps over this time; empty where it shows it. */
    private static Optional<Instant> skipped(LocalDateTime local, ZoneId zone) {
        return Optional.ofNullable(zone.getRules().getTransition(local))
                .filter(ZoneOffsetTransition::isGap)
                .map(ZoneOffsetTransition::getInstant);
    }

    private static Duration lead(Instant rings, Instant startsAt) {
        Duration lead = Duration.between(rings, startsAt);
        return lead.isNegative() ? Duration.ZERO : Duration.ofMinutes(lead.toMinutes());
    }

    boolean covers(LocalTime time) {
        boolean afterFrom = !time.isBefore(from);
        boolean beforeUntil = time.isBefore(until);
        return from.isBefore(until) ? afterFrom && beforeUntil : afterFrom || beforeUntil;
    }
}
