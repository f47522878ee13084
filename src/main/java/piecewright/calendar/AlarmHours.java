package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.house.House;
import piecewright.plan.Availability;
import piecewright.plan.Availability.Stretch;

/**
 * When an alarm may ring: inside somebody's hours and outside quiet hours. One that would ring before somebody's hours
 * begin waits for their begin; one in quiet hours is brought forward; one for which there is no moment is left out.
 */
final class AlarmHours {
    private static final Duration LONGEST_LEAD = Duration.ofDays(1);
    private static final Duration MINUTE = Duration.ofMinutes(1);

    private final Optional<House> house;
    private final Optional<QuietHours> quiet;

    AlarmHours(Optional<House> house, Optional<QuietHours> quiet) {
        this.house = house;
        this.quiet = quiet;
    }

    /** How long before its start an event that starts then shall ring; two that fall together become one. */
    List<Duration> of(Instant startsAt, List<Duration> wished, ZoneId zone) {
        if (house.isEmpty()) return spared(startsAt, wished, zone);
        List<Stretch> hours = hours(house.get(), startsAt);
        List<Duration> leads = new ArrayList<>();
        for (Duration lead : wished) {
            Instant rings = moved(startsAt.minus(lead), startsAt, hours);
            for (Duration spared : spared(startsAt, List.of(between(rings, startsAt)), zone)) {
                Instant last = earlier(startsAt.minus(spared), hours);
                Duration found = between(last, startsAt);
                boolean fits = found.compareTo(LONGEST_LEAD) < 0 && !isQuiet(last, zone) && inside(last, hours);
                if (fits && !leads.contains(found)) leads.add(found);
            }
        }
        return leads;
    }

    private List<Duration> spared(Instant startsAt, List<Duration> leads, ZoneId zone) {
        return quiet.map(hours -> hours.spare(startsAt, leads, zone)).orElse(leads);
    }

    private boolean isQuiet(Instant rings, ZoneId zone) {
        return quiet.filter(hours -> hours.covers(rings.atZone(zone).toLocalTime()))
                .isPresent();
    }

    /** Everybody's hours around an act; a night in which somebody gets up for it counts too. */
    private static List<Stretch> hours(House house, Instant startsAt) {
        Availability people =
                Availability.of(house, startsAt.minus(LONGEST_LEAD.multipliedBy(2)), startsAt.plus(LONGEST_LEAD));
        List<Stretch> hours = new ArrayList<>(people.stretches());
        if (!inside(startsAt, hours)) {
            people.nights().stream()
                    .filter(night -> inside(startsAt, List.of(night)))
                    .forEach(hours::add);
        }
        hours.sort(Comparator.comparing(Stretch::from));
        return hours;
    }

    /** Inside somebody's hours as it is, or when the next begin before the act, or the last minute of those before. */
    private static Instant moved(Instant rings, Instant startsAt, List<Stretch> hours) {
        if (inside(rings, hours)) return rings;
        return hours.stream()
                .map(Stretch::from)
                .filter(from -> from.isAfter(rings) && !from.isAfter(startsAt))
                .findFirst()
                .orElseGet(() -> earlier(rings, hours));
    }

    private static Instant earlier(Instant rings, List<Stretch> hours) {
        if (inside(rings, hours)) return rings;
        return hours.stream()
                .map(stretch -> stretch.until().minus(MINUTE))
                .filter(last -> last.isBefore(rings))
                .max(Comparator.naturalOrder())
                .orElse(rings);
    }

    private static boolean inside(Instant at, List<Stretch> hours) {
        return hours.stream().anyMatch(hour -> !at.isBefore(hour.from()) && at.isBefore(hour.until()));
    }

    private static Duration between(Instant rings, Instant startsAt) {
        return Duration.ofMinutes(Duration.between(rings, startsAt).toMinutes());
    }
}
