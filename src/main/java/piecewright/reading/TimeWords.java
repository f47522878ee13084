package piecewright.reading;

import java.time.DateTimeException;
import java.time.DayOfWeek;
import java.time.Duration;
import java.time.LocalDate;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.stream.Stream;
import piecewright.reading.Piece.Hours;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;

/** Parts of times as people say them: days, parts of a day, "half an hour ago". Clocks are read beside it. */
final class TimeWords {
    private static final Map<Locale, Names> NAMES = new ConcurrentHashMap<>();

    private final Tokens tokens;
    private final LocalDate today;
    private final Names names;
    private final ClockWords clocks;

    TimeWords(Tokens tokens, LocalDate today, Locale locale) {
        this.tokens = tokens;
        this.today = today;
        this.names = NAMES.computeIfAbsent(locale, Names::of);
        this.clocks = new ClockWords(tokens, locale);
    }

    /** Names of months and days in English and the person's language, in lower case. */
    private record Names(List<List<String>> months, List<List<String>> days) {
        static Names of(Locale locale) {
            return new Names(
                    Arrays.stream(Month.values())
                            .map(month -> both(any -> month.getDisplayName(TextStyle.FULL, any), locale))
                            .toList(),
                    Arrays.stream(DayOfWeek.values())
                            .map(day -> both(any -> day.getDisplayName(TextStyle.FULL, any), locale))
                            .toList());
        }

        private static List<String> both(Function<Locale, String> name, Locale locale) {
            return Stream.of(Locale.ENGLISH, locale)
                    .map(each -> name.apply(each).toLowerCase(Locale.ROOT))
                    .distinct()
                    .toList();
        }
    }

    /** The part of a time that begins at a token. */
    Optional<Time> at(int from, boolean ratioNear) {
        Optional<Time> found = ago(from);
        if (found.isEmpty()) found = said(from);
        if (found.isEmpty()) found = isoDay(from);
        if (found.isEmpty()) found = monthDay(from);
        if (found.isEmpty()) found = clocks.at(from);
        if (found.isEmpty() && !ratioNear) found = figuredDay(from);
        if (found.isEmpty()) found = weekday(from);
        return found;
    }

    private Optional<Time> ago(int from) {
        int begin = tokens.has(from, "at") ? tokens.after(from, "at") : from;
        int couple = tokens.after(tokens.skipped(begin), "couple");
        if (couple > tokens.skipped(begin)) {
            int unit = tokens.after(couple, "unit.h");
            int minutes = tokens.after(couple, "unit.min");
            int end = Math.max(unit, minutes);
            if (end > couple && tokens.has(end, "ago")) {
                Duration length = unit > couple ? Duration.ofHours(2) : Duration.ofMinutes(5);
                return time(new Told.Ago(length, true), from, tokens.after(end, "ago"));
            }
        }
        Optional<Numerals.Spelled> length = tokens.lengthHours(begin);
        boolean since = tokens.has(from, "since");
        if (length.isPresent() && tokens.has(length.get().until(), "ago")) {
            return time(
                    new Told.Ago(hours(length.get()), false),
                    from,
                    tokens.after(length.get().until(), "ago"));
        }
        if (since) {
            Optional<Numerals.Spelled> lasting = tokens.lengthHours(tokens.skipped(tokens.after(from, "since")));
            if (lasting.isEmpty()) lasting = tokens.lengthHours(tokens.after(from, "since"));
            if (lasting.isPresent())
                return time(
                        new Told.Ago(hours(lasting.get()), false),
                        from,
                        lasting.get().until());
        }
        boolean into =
                length.isPresent() && begin > from && tokens.get(begin).figure() && tokens.has(begin + 1, "unit.min");
        if (into)
            return time(new Told.Into(hours(length.get())), from, length.get().until());
        Optional<Numerals.Spelled> days = tokens.whole(begin);
        if (days.isPresent() && tokens.has(days.get().until(), "unit.day")) {
            int end = tokens.after(days.get().until(), "unit.day");
            if (tokens.has(end, "ago")) {
                LocalDate day = today.minusDays((long) days.get().value());
                return time(new Told.Day(List.of(day)), from, tokens.after(end, "ago"));
            }
        }
        return Optional.empty();
    }

    private static Duration hours(Numerals.Spelled length) {
        return Duration.ofMinutes(Math.round(length.value() * 60));
    }

    private Optional<Time> said(int from) {
        Lexicon.Found found = tokens.lexicon().at(tokens.list(), from);
        int end = found.until();
        if (found.keys().contains("now")) return time(new Told.Now(), from, end);
        if (found.keys().contains("today")) return time(new Told.Day(List.of(today)), from, end);
        if (found.keys().contains("yesterday")) return time(new Told.Day(List.of(today.minusDays(1))), from, end);
        if (found.keys().contains("before-yesterday")) {
            return time(new Told.Day(List.of(today.minusDays(2))), from, end);
        }
        if (found.keys().contains("vague")) return time(new Told.Vague(), from, end);
        for (Hours hours : Hours.values()) {
            String key = "part." + hours.name().toLowerCase(Locale.ROOT).replace('_', '-');
            if (found.keys().contains(key)) return time(new Told.Part(hours), from, end);
        }
        boolean leads = tokens.is(from, "this", "in", "on", "last", "at", "during", "since");
        if (leads && from + 1 < tokens.size()) {
            Optional<Time> part = said(tokens.is(from + 1, "the") && from + 2 < tokens.size() ? from + 2 : from + 1);
            boolean day = part.isPresent()
                    && (part.get().told() instanceof Told.Part || part.get().told() instanceof Told.Day);
            if (day) return time(part.get().told(), from, part.get().until());
        }
        return Optional.empty();
    }

    private Optional<Time> isoDay(int from) {
        boolean shaped = from + 4 < tokens.size()
                && tokens.get(from).text().matches("20\\d\\d")
                && tokens.is(from + 1, "-")
                && tokens.is(from + 3, "-")
                && tokens.get(from + 2).text().matches("\\d\\d")
                && tokens.get(from + 4).text().matches("\\d\\d");
        if (!shaped) return Optional.empty();
        int end = tokens.is(from + 5, "t") ? from + 6 : from + 5;
        return day(List.of(date(number(from), number(from + 2), number(from + 4))), from, end);
    }

    private int number(int at) {
        return Integer.parseInt(tokens.get(at).text());
    }

    private static Optional<LocalDate> date(int year, int month, int day) {
        try {
            return Optional.of(LocalDate.of(year, month, day));
        } catch (DateTimeException none) {
            return Optional.empty();
        }
    }

    private Optional<Time> day(List<Optional<LocalDate>> days, int from, int end) {
        List<LocalDate> real =
                days.stream().flatMap(Optional::stream).distinct().toList();
        StringBuilder typed = new StringBuilder();
        for (int at = from; at < end; at++)
            typed.append(at > from && !tokens.get(at).glued() ? " " : "")
                    .append(tokens.get(at).text());
        if (real.isEmpty()) return time(new Told.Bad("line.no-day", typed.toString()), from, end);
        return time(new Told.Day(real), from, end);
    }

    /** "8 Jan", "Jan 8th", "the 8th of January". */
    private Optional<Time> monthDay(int from) {
        int begin = tokens.skipped(tokens.is(from, "on") ? from + 1 : from);
        Optional<Numerals.Spelled> first =
                begin < tokens.size() && tokens.get(begin).figure() ? tokens.whole(begin) : Optional.empty();
        if (first.isPresent()) {
            int at = first.get().until();
            if (tokens.is(at, ".", "st", "nd", "rd", "th")) at++;
            if (tokens.is(at, "of")) at++;
            Optional<Month> month = month(at);
            if (month.isPresent()) return lastDay(month.get(), (int) first.get().value(), from, at + 1);
            return Optional.empty();
        }
        Optional<Month> month = month(begin);
        if (month.isEmpty()) return Optional.empty();
        int at = tokens.is(begin + 1, ".") ? begin + 2 : begin + 1;
        Optional<Numerals.Spelled> day =
                at < tokens.size() && tokens.get(at).figure() ? tokens.whole(at) : Optional.empty();
        if (day.isEmpty()) return Optional.empty();
        int end = tokens.is(day.get().until(), "st", "nd", "rd", "th")
                ? day.get().until() + 1
                : day.get().until();
        return lastDay(month.get(), (int) day.get().value(), from, end);
    }

    private Optional<Time> lastDay(Month month, int day, int from, int end) {
        return day(List.of(lastSuch(month.getValue(), day)), from, end);
    }

    /** The last such day that has been; one within a month ahead is told as ahead. */
    private Optional<LocalDate> lastSuch(int month, int day) {
        Optional<LocalDate> date = date(today.getYear(), month, day);
        return date.map(known -> known.isAfter(today.plusDays(31)) ? known.minusYears(1) : known);
    }

    private Optional<Month> month(int at) {
        if (at >= tokens.size() || !tokens.get(at).word()) return Optional.empty();
        String word = tokens.get(at).text();
        for (Month month : Month.values()) {
            if (names.months().get(month.ordinal()).stream().anyMatch(name -> named(word, name)))
                return Optional.of(month);
        }
        return Optional.empty();
    }

    private static boolean named(String word, String name) {
        return word.equals(name) || word.length() >= 3 && word.length() <= 5 && name.startsWith(word);
    }

    /** "12/1", "1/12/2027", "12.1.", "12.01.2027". */
    private Optional<Time> figuredDay(int from) {
        if (!tokens.get(from).figure()) return Optional.empty();
        if (tokens.get(from).text().matches("\\d{1,2}\\.\\d{1,2}(\\.20\\d\\d)?") && dotted(from)) {
            String[] parts = tokens.get(from).text().split("\\.");
            int year = parts.length > 2 ? Integer.parseInt(parts[2]) : 0;
            int end = parts.length > 2 ? from + 1 : from + 2;
            return slashed(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), year, false, from, end);
        }
        boolean shaped = tokens.is(from + 1, "/")
                && tokens.get(from + 1).glued()
                && from + 2 < tokens.size()
                && tokens.get(from + 2).text().matches("\\d{1,2}")
                && tokens.get(from).text().matches("\\d{1,2}");
        if (!shaped) return Optional.empty();
        boolean yeared = tokens.is(from + 3, "/")
                && from + 4 < tokens.size()
                && tokens.get(from + 4).text().matches("20\\d\\d");
        if (tokens.is(from + 3, "/") && !yeared) return Optional.empty();
        int first = number(from);
        int second = number(from + 2);
        if (first > 31 || second > 31 || first > 12 && second > 12 || first == 0 || second == 0)
            return Optional.empty();
        return slashed(first, second, yeared ? number(from + 4) : 0, true, from, yeared ? from + 5 : from + 3);
    }

    private boolean dotted(int from) {
        return tokens.get(from).text().matches(".*20\\d\\d")
                || tokens.is(from + 1, ".") && tokens.get(from + 1).glued() && from + 2 < tokens.size();
    }

    private Optional<Time> slashed(int first, int second, int year, boolean both, int from, int end) {
        List<Optional<LocalDate>> days = new ArrayList<>();
        days.add(year > 0 ? date(year, second, first) : lastSuch(second, first));
        if (both) days.add(year > 0 ? date(year, first, second) : lastSuch(first, second));
        return day(days, from, end);
    }

    /** The last such day that has been, today included. */
    private Optional<Time> weekday(int from) {
        int at = tokens.is(from, "on", "last") ? from + 1 : from;
        if (at >= tokens.size() || !tokens.get(at).word()) return Optional.empty();
        String word = tokens.get(at).text();
        for (DayOfWeek day : DayOfWeek.values()) {
            if (names.days().get(day.ordinal()).stream().noneMatch(name -> named(word, name))) continue;
            if (List.of("sun", "sat").contains(word) && at + 1 < tokens.size() && tokens.is(at + 1, "in", "on"))
                continue;
            LocalDate date = today;
            while (date.getDayOfWeek() != day) date = date.minusDays(1);
            return time(new Told.Day(List.of(date)), from, at + 1);
        }
        return Optional.empty();
    }

    private static Optional<Time> time(Told told, int from, int until) {
        return Optional.of(new Time(told, from, until));
    }
}
