package piecewright.text;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.Month;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.chrono.IsoChronology;
import java.time.format.DateTimeFormatterBuilder;
import java.time.format.FormatStyle;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/**
 * When a line says something happened: "21:40 yesterday", "9:40 pm", "fri 18:30", "2027-03-28 01:30 +02:00", "2 h ago".
 * Without a day it is the last such hour that has been; without an hour it is now. What could be two instants is asked.
 */
final class SpokenTime {
    /** Judgement: clocks of people and machine differ by less. */
    private static final Duration AHEAD = Duration.ofMinutes(5);

    private static final Pattern OFFSET_CLOCK =
            Pattern.compile("(?<![\\d.,])(\\d{1,2}):(\\d{2})\\s*([+-]\\d{2}:\\d{2})(?!\\d)");
    private static final Pattern HALF_CLOCK =
            Pattern.compile("(?<![\\d.,:])(\\d{1,2})(?:[:.](\\d{2}))?\\s*([ap])\\.?m\\b\\.?");
    private static final Pattern CLOCK = Pattern.compile("(?<![\\d.,:])(\\d{1,2}):(\\d{2})(?!\\d)(?:\\s*uhr\\b)?");
    private static final Pattern BARE_HOUR = Pattern.compile("(?<!\\p{L})at (\\d{1,2})(?!\\s*[\\d.,:%°]|\\s*\\p{L})");
    private static final Pattern AGO = Pattern.compile(
            "(?<![\\d.,])(\\d{1,3})\\s*(h|hours?|hrs?|min|mins|minutes?)(?:\\s*(\\d{1,2})\\s*(?:min|mins|minutes?))?\\s*ago\\b");
    private static final Pattern NOW = Pattern.compile("(?<!\\p{L})(?:just )?now\\b");
    private static final Pattern ISO_DAY = Pattern.compile("(?<!\\d)(20\\d{2})-(\\d{2})-(\\d{2})t?");
    private static final Pattern SLASHED =
            Pattern.compile("(?<![\\d/])(\\d{1,2})/(\\d{1,2})(?:/(20\\d{2}))?(?![\\d/])");
    private static final Pattern YESTERDAY = Pattern.compile("(?<!\\p{L})yesterday\\b");
    private static final Pattern TODAY =
            Pattern.compile("(?<!\\p{L})(?:today|tonight|this (?:morning|evening|noon))\\b");

    private final ZoneId zone;
    private final Locale locale;
    private final Instant now;
    private final MomentFormat moments;

    SpokenTime(ZoneId zone, Locale locale, Instant now) {
        this.zone = zone;
        this.locale = locale;
        this.now = now;
        this.moments = new MomentFormat(zone, locale);
    }

    /** Takes the time out of the line. */
    Instant take(RestOfLine line) throws UnclearException {
        Optional<MatchResult> ago = line.take(AGO);
        if (ago.isPresent()) return now.minus(length(ago.get()));
        Optional<LocalDate> day = day(line);
        Optional<MatchResult> offset = line.take(OFFSET_CLOCK);
        if (offset.isPresent()) return atOffset(day, offset.get());
        List<LocalTime> times = times(line);
        if (times.isEmpty()) {
            line.take(NOW);
            if (day.isPresent() && !day.get().equals(today())) {
                throw new UnclearException(Phrases.say("line.no-hour", moments.day(day.get())));
            }
            return now;
        }
        return one(candidates(day, times));
    }

    private LocalDate today() {
        return LocalDate.ofInstant(now, zone);
    }

    private static Duration length(MatchResult ago) {
        long first = Long.parseLong(ago.group(1));
        Duration length = ago.group(2).startsWith("h") ? Duration.ofHours(first) : Duration.ofMinutes(first);
        return ago.group(3) == null ? length : length.plusMinutes(Long.parseLong(ago.group(3)));
    }

    private Optional<LocalDate> day(RestOfLine line) throws UnclearException {
        Optional<MatchResult> iso = line.take(ISO_DAY);
        if (iso.isPresent()) {
            MatchResult found = iso.get();
            return Optional.of(date(number(found, 1), number(found, 2), number(found, 3)));
        }
        if (line.take(YESTERDAY).isPresent()) return Optional.of(today().minusDays(1));
        if (line.take(TODAY).isPresent()) return Optional.of(today());
        Optional<LocalDate> named = monthDay(line);
        if (named.isPresent()) return named;
        Optional<MatchResult> slashed = line.has(SpokenFigures.CHIT) ? Optional.empty() : line.take(SLASHED);
        return slashed.isPresent() ? Optional.of(slashed(slashed.get())) : weekday(line);
    }

    private LocalDate slashed(MatchResult found) throws UnclearException {
        int first = number(found, 1);
        int second = number(found, 2);
        int year = found.group(3) == null ? today().getYear() : number(found, 3);
        if (first <= 12 && second <= 12 && first != second) {
            throw new UnclearException(
                    Phrases.say("line.two-days", found.group()),
                    List.of(
                            date(year, second, first).toString(),
                            date(year, first, second).toString()));
        }
        return first > 12 ? date(year, second, first) : date(year, first, second);
    }

    private Optional<LocalDate> monthDay(RestOfLine line) throws UnclearException {
        for (Month month : Month.values()) {
            String names = names(
                    month.getDisplayName(TextStyle.FULL, Locale.ENGLISH),
                    month.getDisplayName(TextStyle.FULL, locale),
                    3);
            Optional<MatchResult> dayFirst =
                    line.take(Pattern.compile("(?<![\\d.,:])(\\d{1,2})\\.?(?:st|nd|rd|th)?\\s*" + names));
            Optional<MatchResult> found = dayFirst.isPresent()
                    ? dayFirst
                    : line.take(Pattern.compile(names + "\\s*(\\d{1,2})(?:st|nd|rd|th)?(?![\\d:])"));
            if (found.isEmpty()) continue;
            LocalDate date = date(today().getYear(), month.getValue(), number(found.get(), 1));
            return Optional.of(date.isAfter(today()) ? date.minusYears(1) : date);
        }
        return Optional.empty();
    }

    /** The last such day that has been, today included. */
    private Optional<LocalDate> weekday(RestOfLine line) {
        for (DayOfWeek day : DayOfWeek.values()) {
            String names = names(
                    day.getDisplayName(TextStyle.FULL, Locale.ENGLISH), day.getDisplayName(TextStyle.FULL, locale), 3);
            if (line.take(Pattern.compile("(?:last |on )?" + names)).isPresent()) {
                LocalDate date = today();
                while (date.getDayOfWeek() != day) date = date.minusDays(1);
                return Optional.of(date);
            }
        }
        return Optional.empty();
    }

    private String names(String english, String local, int shortest) {
        String own = local.toLowerCase(Locale.ROOT);
        String word = english.toLowerCase(Locale.ROOT);
        return "(?<!\\p{L})(?:" + Pattern.quote(word) + "|" + Pattern.quote(word.substring(0, shortest)) + "|"
                + Pattern.quote(own) + ")(?!\\p{L})\\.?";
    }

    private List<LocalTime> times(RestOfLine line) throws UnclearException {
        Optional<MatchResult> half = line.take(HALF_CLOCK);
        if (half.isPresent()) {
            int hour = number(half.get(), 1);
            if (hour < 1 || hour > 12)
                throw new UnclearException(
                        Phrases.say("line.no-clock", half.get().group()));
            int minute = half.get().group(2) == null ? 0 : number(half.get(), 2);
            return List.of(time(
                    hour % 12 + (half.get().group(3).equals("p") ? 12 : 0),
                    minute,
                    half.get().group()));
        }
        Optional<MatchResult> clock = line.take(CLOCK);
        if (clock.isPresent()) {
            int hour = number(clock.get(), 1);
            LocalTime told = time(hour, number(clock.get(), 2), clock.get().group());
            boolean padded = clock.get().group(1).startsWith("0");
            boolean either = halfDays() && hour >= 1 && hour <= 11 && !padded;
            return either ? List.of(told, told.plusHours(12)) : List.of(told);
        }
        Optional<MatchResult> bare = line.take(BARE_HOUR);
        if (bare.isEmpty()) return List.of();
        int hour = number(bare.get(), 1);
        LocalTime told = time(hour, 0, bare.get().group());
        return hour >= 1 && hour <= 11 ? List.of(told, told.plusHours(12)) : List.of(told);
    }

    /** Whether people of this locale say am and pm. */
    private boolean halfDays() {
        return DateTimeFormatterBuilder.getLocalizedDateTimePattern(
                        null, FormatStyle.SHORT, IsoChronology.INSTANCE, locale)
                .matches(".*[aB].*");
    }

    private List<Instant> candidates(Optional<LocalDate> day, List<LocalTime> times) throws UnclearException {
        List<Instant> found = new ArrayList<>();
        for (LocalTime time : times) {
            if (day.isPresent()) {
                found.addAll(instants(day.get().atTime(time)));
                continue;
            }
            List<Instant> today = past(instants(today().atTime(time)));
            found.addAll(today.isEmpty() ? instants(today().minusDays(1).atTime(time)) : today);
        }
        return found;
    }

    private List<Instant> past(List<Instant> instants) {
        return instants.stream().filter(at -> !at.isAfter(now.plus(AHEAD))).toList();
    }

    /** One instant, two in the hour the clocks repeat; the hour they skip is asked about. */
    private List<Instant> instants(LocalDateTime local) throws UnclearException {
        List<ZoneOffset> offsets = zone.getRules().getValidOffsets(local);
        if (offsets.isEmpty()) {
            Instant after = local.atZone(zone).toInstant();
            throw new UnclearException(
                    Phrases.say("line.skipped-hour", local.toLocalTime().toString(), moments.day(local.toLocalDate())),
                    List.of(choice(after.minus(Duration.ofHours(1))), choice(after)));
        }
        return offsets.stream().map(local::toInstant).toList();
    }

    private Instant one(List<Instant> candidates) throws UnclearException {
        List<Instant> past = past(candidates).stream().distinct().sorted().toList();
        if (past.isEmpty()) throw new UnclearException(Phrases.say("line.ahead", moments.moment(candidates.get(0))));
        if (past.size() == 1) return past.get(0);
        boolean halves =
                Duration.between(past.get(0), past.get(past.size() - 1)).compareTo(Duration.ofHours(3)) > 0;
        throw new UnclearException(
                Phrases.say(halves ? "line.which-half" : "line.which-hour"),
                past.stream().map(this::choice).toList());
    }

    private String choice(Instant at) {
        LocalDateTime local = LocalDateTime.ofInstant(at, zone);
        boolean twice = zone.getRules().getValidOffsets(local).size() != 1;
        return local.toLocalDate() + " " + local.toLocalTime().withSecond(0).withNano(0)
                + (twice ? " " + zone.getRules().getOffset(at) : "");
    }

    private Instant atOffset(Optional<LocalDate> day, MatchResult found) throws UnclearException {
        LocalTime time = time(number(found, 1), number(found, 2), found.group());
        try {
            ZoneOffset offset = ZoneOffset.of(found.group(3));
            Instant at = day.orElse(today()).atTime(time).toInstant(offset);
            return one(List.of(day.isEmpty() && at.isAfter(now.plus(AHEAD)) ? at.minus(Duration.ofDays(1)) : at));
        } catch (DateTimeException wrong) {
            throw new UnclearException(Phrases.say("line.no-clock", found.group()));
        }
    }

    private static LocalTime time(int hour, int minute, String typed) throws UnclearException {
        if (hour > 23 || minute > 59) throw new UnclearException(Phrases.say("line.no-clock", typed.strip()));
        return LocalTime.of(hour, minute);
    }

    private static LocalDate date(int year, int month, int day) throws UnclearException {
        try {
            return LocalDate.of(year, month, day);
        } catch (DateTimeException wrong) {
            throw new UnclearException(Phrases.say("line.no-day", year + "-" + month + "-" + day));
        }
    }

    private static int number(MatchResult found, int group) {
        return Integer.parseInt(found.group(group));
    }
}
