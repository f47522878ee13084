package piecewright.calendar;

import java.time.DateTimeException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times and durations as iCalendar writes them. */
final class IcsTimes {
    private static final Pattern ACCURATE =
            Pattern.compile("([+-]?)PT(?=[0-9])(?:([0-9]{1,6})H)?(?:([0-9]{1,6})M)?(?:([0-9]{1,6})S)?");

    private IcsTimes() {}

    /** "20270328T030000Z"; empty for anything else, impossible days and second 60 included. */
    static Optional<Instant> utc(String value) {
        if (value.length() != 16 || !value.endsWith("Z")) return Optional.empty();
        return local(value.substring(0, 15)).map(local -> local.toInstant(ZoneOffset.UTC));
    }

    /** "20270328T030000"; read by hand, for a formatter takes most of the time of checking a large calendar. */
    static Optional<LocalDateTime> local(String value) {
        if (value.length() != 15 || value.charAt(8) != 'T') return Optional.empty();
        int day = digits(value, 0, 8);
        int time = digits(value, 9, 15);
        if (day < 0 || time < 0) return Optional.empty();
        try {
            return Optional.of(LocalDateTime.of(
                    day / 10_000, day / 100 % 100, day % 100, time / 10_000, time / 100 % 100, time % 100));
        } catch (DateTimeException notATime) {
            return Optional.empty();
        }
    }

    /** The number these ASCII digits make; negative if any is none. */
    private static int digits(String value, int from, int until) {
        int number = 0;
        for (int at = from; at < until; at++) {
            int digit = value.charAt(at) - '0';
            if (digit < 0 || digit > 9) return -1;
            number = 10 * number + digit;
        }
        return number;
    }

    /** A duration in hours, minutes and seconds alone, which is exact; days and weeks are not. */
    static Optional<Duration> accurate(String value) {
        Matcher parts = ACCURATE.matcher(value);
        if (!parts.matches()) return Optional.empty();
        Duration length =
                Duration.ofHours(number(parts, 2)).plusMinutes(number(parts, 3)).plusSeconds(number(parts, 4));
        return Optional.of("-".equals(parts.group(1)) ? length.negated() : length);
    }

    private static long number(Matcher parts, int group) {
        String digits = parts.group(group);
        return digits == null ? 0 : Long.parseLong(digits);
    }
}
