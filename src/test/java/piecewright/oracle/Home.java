package piecewright.oracle;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;

/**
 * A household as its file says it: clock times of people, never instants.
 *
 * @param stoves what may be trusted to each heater, by its name
 */
public record Home(ZoneId zone, List<Somebody> people, Nights nights, Map<String, Stove> stoves) {
    private static final double ATTENDED_ABOVE_C = 60;

    /**
     * A heater as its owner declares it.
     *
     * @param safe may run hot while nobody is there
     * @param holds keeps what it is set to
     */
    public record Stove(boolean safe, boolean holds) {}

    /** From inclusive to exclusive, minutes since midnight, [0, 1440]. */
    public record Span(int from, int until) {
        boolean holds(int minute) {
            return minute >= from && minute < until;
        }
    }

    /** Somebody's hours; a dated day replaces the weekday. */
    public record Somebody(String name, Map<DayOfWeek, List<Span>> week, Map<LocalDate, List<Span>> dated) {
        List<Span> on(LocalDate day) {
            return dated.getOrDefault(day, week.getOrDefault(day.getDayOfWeek(), List.of()));
        }
    }

    /** Nights somebody would get up in; from after until ends on the next day. */
    public record Nights(int most, int from, int until) {
        boolean holds(int minute) {
            return from < until ? minute >= from && minute < until : minute >= from || minute < until;
        }
    }

    /** Whether this person is there in the minute that begins now, by the clock on the wall. */
    boolean there(Somebody somebody, Instant minute) {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(LocalDateTime.ofInstant(minute, zone));
        LocalDateTime clock = LocalDateTime.ofInstant(minute, zone);
        if (offsets.size() == 1) return holds(somebody, clock);
        return somebody.on(clock.toLocalDate()).stream().anyMatch(span -> repeated(span, clock, minute, offsets));
    }

    /** In an hour the clock shows twice: hours run from the first showing of their begin to the last of their end. */
    private static boolean repeated(Span span, LocalDateTime clock, Instant minute, List<ZoneOffset> offsets) {
        LocalDateTime midnight = clock.toLocalDate().atStartOfDay();
        Instant from = midnight.plusMinutes(span.from()).toInstant(offsets.get(0));
        Instant until = midnight.plusMinutes(span.until()).toInstant(offsets.get(1));
        return !minute.isBefore(from) && minute.isBefore(until);
    }

    private static boolean holds(Somebody somebody, LocalDateTime clock) {
        int minute = clock.getHour() * 60 + clock.getMinute();
        return somebody.on(clock.toLocalDate()).stream().anyMatch(span -> span.holds(minute));
    }

    boolean anybodyThere(Instant minute) {
        return people.stream().anyMatch(somebody -> there(somebody, minute));
    }

    /** Whether this person is there from the first to the last minute of the stretch. */
    boolean throughout(Somebody somebody, Instant from, Instant until) {
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(60)) {
            if (!there(somebody, at)) return false;
        }
        return true;
    }

    /** Whether the stretch lies in a night somebody would get up in. */
    boolean allNight(Instant from, Instant until) {
        if (nights.most() == 0) return false;
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(60)) {
            LocalDateTime clock = LocalDateTime.ofInstant(at, zone);
            if (!nights.holds(clock.getHour() * 60 + clock.getMinute())) return false;
        }
        return true;
    }

    /** Whether the heater may be left so; one that no file names may not be left hot. */
    boolean leaves(String heater, double c) {
        Stove stove = stoves.getOrDefault(heater, new Stove(false, true));
        return stove.holds() && (stove.safe() || c <= ATTENDED_ABOVE_C);
    }
}
