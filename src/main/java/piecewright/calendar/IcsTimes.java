package piecewright.calendar;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.format.ResolverStyle;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Times and durations as iCalendar writes them. */
final class IcsTimes {
    private static final DateTimeFormatter LOCAL =
            DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss", Locale.ROOT).withResolverStyle(ResolverStyle.STRICT);
    private static final Pattern ACCURATE =
            Pattern.compile("([+-]?)PT(?=[0-9])(?:([0-9]{1,6})H)?(?:([0-9]{1,6})M)?(?:([0-9]{1,6})S)?");

    private IcsTimes() {}

    /** "20270328T030000Z"; empty for anything else, impossible days and second 60 included. */
    static Optional<Instant> utc(String value) {
        if (value.length() != 16 || !value.endsWith("Z")) return Optional.empty();
        return local(value.substring(0, 15)).map(local -> local.toInstant(ZoneOffset.UTC));
    }

    /** "20270328T030000". */
    static Optional<LocalDateTime> local(String value) {
        if (value.length() != 15) return Optional.empty();
        try {
            return Optional.of(LocalDateTime.parse(value, LOCAL));
        } catch (DateTimeParseException notATime) {
            return Optional.empty();
        }
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
