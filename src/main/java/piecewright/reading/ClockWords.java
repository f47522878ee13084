package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.reading.Piece.Half;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;
import piecewright.reading.Piece.Told.Clock;

/** Clocks as people write and say them: "21:40", "9.30pm", "940p", "21h40", "at ten", "quarter to ten", "noon". */
final class ClockWords {
    private final Tokens tokens;
    private final Locale locale;

    ClockWords(Tokens tokens, Locale locale) {
        this.tokens = tokens;
        this.locale = locale;
    }

    /** Whether an unpadded hour is on the 24-hour clock here. */
    static boolean wholeDay(Locale locale) {
        return locale.getLanguage().equals("de");
    }

    static boolean unitedStates(Locale locale) {
        return locale.getCountry().equals("US");
    }

    Optional<Time> at(int from) {
        int begin = lead(from);
        Optional<Time> found = named(from, begin);
        if (found.isEmpty()) found = colon(from, begin);
        if (found.isEmpty()) found = halves(from, begin);
        if (found.isEmpty()) found = hourMark(from, begin);
        if (found.isEmpty()) found = spoken(from, begin);
        if (found.isEmpty()) found = padded(from, begin);
        if (found.isEmpty() && begin > from && !tokens.is(from, "on")) found = bareHour(from, begin);
        return found;
    }

    /** The token after "at", "just after", "from", "since". */
    private int lead(int from) {
        int at = tokens.after(from, "just-after");
        if (at == from) at = tokens.after(from, "at");
        if (at == from && tokens.is(from, "since", "after", "on")) at = from + 1;
        if (at > from && tokens.has(at, "at")) at = tokens.after(at, "at");
        if (at > from && tokens.is(at, "about", "around", "just")) at++;
        return at;
    }

    private Optional<Time> named(int from, int begin) {
        int noon = tokens.after(begin, "noon");
        if (noon > begin) return clock(12, 0, Half.FIXED, from, noon);
        int midnight = tokens.after(begin, "midnight");
        return midnight > begin ? clock(0, 0, Half.MIDNIGHT, from, midnight) : Optional.empty();
    }

    private Optional<Time> colon(int from, int begin) {
        if (begin >= tokens.size() || !tokens.get(begin).text().matches("\\d{1,2}:\\d{2}(:\\d{2})?"))
            return Optional.empty();
        String[] parts = tokens.get(begin).text().split(":");
        int end = begin + 1;
        Optional<String> offset = Optional.empty();
        boolean shifted = tokens.is(end, "+", "-")
                && end + 1 < tokens.size()
                && tokens.get(end + 1).text().matches("\\d{2}:\\d{2}");
        if (shifted) {
            offset = Optional.of(tokens.get(end).text() + tokens.get(end + 1).text());
            end += 2;
        } else if (tokens.is(end, "z") && tokens.get(end).glued()) {
            offset = Optional.of("Z");
            end++;
        }
        return read(parts[0], parts[1], offset, from, end);
    }

    /** A figure with am or pm behind it. */
    private Optional<Time> halves(int from, int begin) {
        if (begin >= tokens.size()) return Optional.empty();
        if (!tokens.get(begin).figure()) {
            Optional<Numerals.Spelled> hour = tokens.whole(begin);
            boolean told = hour.isPresent() && half(hour.get().until()).isPresent();
            if (!told) return Optional.empty();
            return read(
                    String.valueOf((int) hour.orElseThrow().value()),
                    "00",
                    Optional.empty(),
                    from,
                    hour.get().until());
        }
        if (half(begin + 1).isEmpty()) return Optional.empty();
        String text = tokens.get(begin).text();
        if (text.matches("\\d{1,2}")) return read(text, "00", Optional.empty(), from, begin + 1);
        if (text.matches("\\d{1,2}\\.\\d{2}")) {
            String[] parts = text.split("\\.");
            return read(parts[0], parts[1], Optional.empty(), from, begin + 1);
        }
        if (!text.matches("\\d{3,4}")) return Optional.empty();
        int cut = text.length() - 2;
        return read(text.substring(0, cut), text.substring(cut), Optional.empty(), from, begin + 1);
    }

    private record HalfTold(Half half, int until) {}

    private Optional<HalfTold> half(int at) {
        if (at >= tokens.size()) return Optional.empty();
        if (tokens.is(at, "a", "p")) {
            boolean dotted = tokens.is(at + 1, ".") && tokens.is(at + 2, "m");
            boolean blank = tokens.is(at + 1, "m") && !tokens.get(at + 1).glued();
            boolean alone = tokens.get(at).glued() && tokens.get(at - 1).figure();
            if (!dotted && !blank && !alone) return Optional.empty();
            int end = dotted ? at + 3 : blank ? at + 2 : at + 1;
            if (dotted && tokens.is(end, ".")) end++;
            return Optional.of(new HalfTold(tokens.is(at, "a") ? Half.AM : Half.PM, end));
        }
        if (tokens.is(at, "am", "pm"))
            return Optional.of(new HalfTold(tokens.is(at, "am") ? Half.AM : Half.PM, at + 1));
        return Optional.empty();
    }

    /** "21h40", "21 Uhr 40", "7 o'clock". */
    private Optional<Time> hourMark(int from, int begin) {
        Optional<Numerals.Spelled> hour = tokens.whole(begin);
        if (hour.isEmpty() || hour.get().value() > 24) return Optional.empty();
        int at = hour.get().until();
        String typed = tokens.get(begin).figure()
                ? tokens.get(begin).text()
                : String.valueOf((int) hour.get().value());
        boolean h = tokens.is(at, "h")
                && tokens.get(at).glued()
                && tokens.get(begin).figure();
        boolean minutes = at + 1 < tokens.size() && tokens.get(at + 1).text().matches("[0-5]\\d");
        if (h && minutes && tokens.get(at + 1).glued())
            return clock((int) hour.get().value(), number(at + 1), Half.FIXED, from, at + 2);
        if (tokens.is(at, "uhr")) {
            boolean more = minutes && !tokens.has(at + 2, "unit.kg");
            return clock((int) hour.get().value(), more ? number(at + 1) : 0, Half.FIXED, from, more ? at + 2 : at + 1);
        }
        int clock = tokens.after(at, "clock");
        if (clock == at && tokens.is(at, "o") && tokens.is(at + 1, "clock")) clock = at + 2;
        return clock > at ? read(typed, "00", Optional.empty(), from, clock) : Optional.empty();
    }

    private int number(int at) {
        return Integer.parseInt(tokens.get(at).text());
    }

    /** "half past two", "quarter of ten", "twenty to ten", "half nine". */
    private Optional<Time> spoken(int from, int begin) {
        int at = tokens.skipped(begin);
        int minutes = -1;
        int next = at;
        if (tokens.is(at, "half", "½")) {
            minutes = 30;
            next = at + 1;
        } else if (tokens.is(at, "quarter", "¼")) {
            minutes = 15;
            next = at + 1;
        } else if (tokens.whole(at).isPresent()) {
            Numerals.Spelled typed = tokens.whole(at).get();
            minutes = typed.value() < 60 ? (int) typed.value() : -1;
            next = tokens.is(typed.until(), "minutes", "mins", "min") ? typed.until() + 1 : typed.until();
        }
        if (minutes < 0) return Optional.empty();
        boolean past = tokens.is(next, "past", "after");
        boolean to = tokens.is(next, "to", "before", "till", "of");
        if (past || to) {
            Optional<Numerals.Spelled> hour = tokens.whole(next + 1);
            boolean noon = tokens.has(next + 1, "noon") || tokens.has(next + 1, "midnight");
            boolean shaped =
                    hour.isPresent() && hour.get().value() >= 1 && hour.get().value() <= 12;
            if (!shaped
                    || noon
                    || tokens.is(next, "of", "to") && united(hour.get().until())) return Optional.empty();
            int whole = (int) hour.get().value();
            int shown = past ? whole : whole == 1 ? 12 : whole - 1;
            return halfTold(
                    shown, past ? minutes : 60 - minutes, from, hour.get().until());
        }
        boolean halfHour = tokens.is(at, "half") && tokens.whole(next).isPresent();
        if (!halfHour) return Optional.empty();
        Numerals.Spelled hour = tokens.whole(next).get();
        if (hour.value() < 1 || hour.value() > 12 || united(hour.until())) return Optional.empty();
        Clock british = new Clock((int) hour.value(), 30, Half.EITHER, Optional.empty());
        boolean sure = !wholeDay(locale) && !unitedStates(locale);
        if (sure) return halfTold(british.hour(), 30, from, hour.until());
        Clock german = new Clock(hour.value() == 1 ? 12 : (int) hour.value() - 1, 30, Half.EITHER, Optional.empty());
        return Optional.of(new Time(new Told.Clocks(List.of(german, british)), from, hour.until()));
    }

    private Optional<Time> halfTold(int hour, int minute, int from, int end) {
        Optional<HalfTold> told = half(end);
        return clock(
                hour,
                minute,
                told.map(HalfTold::half).orElse(Half.EITHER),
                from,
                told.map(HalfTold::until).orElse(end));
    }

    /** A unit stands there: the figure before it is no hour. */
    private boolean united(int at) {
        if (at >= tokens.size()) return false;
        if (tokens.is(at, "%", "°", "/", "#", "\"", "-", "+")) return true;
        Lexicon.Found found = tokens.lexicon().at(tokens.list(), at);
        return found.keys().stream().anyMatch(key -> key.startsWith("unit."));
    }

    /** "0430": four digits that begin with nought are no weight. */
    private Optional<Time> padded(int from, int begin) {
        if (begin >= tokens.size() || united(begin + 1)) return Optional.empty();
        String text = tokens.get(begin).text();
        boolean clock = text.matches("0\\d[0-5]\\d") || begin > from && text.matches("(1\\d|2[0-3])[0-5]\\d");
        return clock
                ? read(text.substring(0, 2), text.substring(2), Optional.empty(), from, begin + 1)
                : Optional.empty();
    }

    /** "at 9", "at 9.15", "at ten". */
    private Optional<Time> bareHour(int from, int begin) {
        if (begin >= tokens.size() || united(begin + 1)) return Optional.empty();
        Token token = tokens.get(begin);
        if (token.figure()) {
            String text = token.text();
            boolean followed = begin + 1 < tokens.size()
                    && tokens.get(begin + 1).glued()
                    && tokens.get(begin + 1).word();
            if (followed) return Optional.empty();
            if (text.matches("\\d{1,2}") && Integer.parseInt(text) <= 24)
                return read(text, "00", Optional.empty(), from, begin + 1);
            boolean dotted = text.matches("\\d{1,2}\\.[0-5]\\d") && Integer.parseInt(text.split("\\.")[0]) < 24;
            if (!dotted) return Optional.empty();
            String[] parts = text.split("\\.");
            return read(parts[0], parts[1], Optional.empty(), from, begin + 1);
        }
        Optional<Numerals.Spelled> hour = tokens.numerals().spelled(tokens.list(), begin);
        boolean shaped = hour.isPresent()
                && hour.get().value() >= 1
                && hour.get().value() <= 12
                && !united(hour.get().until());
        if (!shaped) return Optional.empty();
        Optional<Numerals.Spelled> minute =
                tokens.numerals().spelled(tokens.list(), hour.get().until());
        boolean more =
                minute.isPresent() && minute.get().value() >= 10 && minute.get().value() < 60;
        int end = more ? minute.get().until() : hour.get().until();
        if (tokens.is(end, "of", "in", "on") && !tokens.is(end + 1, "the")
                || tokens.is(end, "quarter", "quarters", "thirds")) return Optional.empty();
        return halfTold((int) hour.get().value(), more ? (int) minute.get().value() : 0, from, end);
    }

    private Optional<Time> read(String hourText, String minuteText, Optional<String> offset, int from, int end) {
        int hour = Integer.parseInt(hourText);
        int minute = Integer.parseInt(minuteText);
        Optional<HalfTold> told = half(end);
        int until = told.map(HalfTold::until).orElse(end);
        if (tokens.is(until, "uhr", "h") && told.isEmpty()) until++;
        boolean fixed =
                hourText.length() == 2 && hour < 10 || hour > 12 || hour == 0 || wholeDay(locale) || offset.isPresent();
        boolean impossible = hour > 24 || hour == 24 && minute > 0 || minute > 59 || told.isPresent() && hour > 12;
        if (impossible) {
            List<String> typed = new ArrayList<>();
            for (int at = Math.min(from, end - 1); at < until; at++)
                typed.add(tokens.get(at).text());
            return Optional.of(new Time(new Told.Bad("line.no-clock", String.join(" ", typed)), from, until));
        }
        Half half = told.map(HalfTold::half).orElse(fixed ? Half.FIXED : Half.EITHER);
        return Optional.of(new Time(new Clock(hour % 24, minute, half, offset), from, until));
    }

    private static Optional<Time> clock(int hour, int minute, Half half, int from, int until) {
        return Optional.of(new Time(new Clock(hour % 24, minute, half, Optional.empty()), from, until));
    }
}
