package piecewright.reading;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** The tokens of one line beside the vocabulary: what stands at a place. */
record Tokens(List<Token> list, Lexicon lexicon, Numerals numerals) {
    int size() {
        return list.size();
    }

    Token get(int at) {
        return list.get(at);
    }

    boolean is(int at, String... any) {
        return at >= 0 && at < size() && List.of(any).contains(list.get(at).text());
    }

    /** The token after words of this key; the same place when they do not stand there. */
    int after(int at, String key) {
        if (at >= size()) return at;
        Lexicon.Found found = lexicon.at(list, at);
        return found.keys().contains(key) ? found.until() : at;
    }

    boolean has(int at, String key) {
        return after(at, key) > at;
    }

    /** The token after any articles. */
    int skipped(int at) {
        int next = at;
        while (next < size() && is(next, "the", "a", "an")) next++;
        return next;
    }

    /** A whole number in digits or words and the token after it. */
    Optional<Numerals.Spelled> whole(int at) {
        if (at >= size()) return Optional.empty();
        Token token = get(at);
        if (!token.figure()) return numerals.spelled(list, at);
        boolean plain = token.text().length() <= 4 && token.text().chars().allMatch(Character::isDigit);
        return plain ? Optional.of(new Numerals.Spelled(Double.parseDouble(token.text()), at + 1)) : Optional.empty();
    }

    /** A number in digits or words and the token after it. */
    Optional<Numerals.Spelled> number(int at) {
        if (at >= size()) return Optional.empty();
        if (!get(at).figure()) return numerals.spelled(list, at);
        List<Double> values = numerals.values(get(at).text());
        return values.isEmpty() ? Optional.empty() : Optional.of(new Numerals.Spelled(values.get(0), at + 1));
    }

    /** A length of time in hours, "1h20", "20 minutes", "an hour and a half", and the token after it. */
    Optional<Numerals.Spelled> lengthHours(int at) {
        if (is(at, "a") && is(at + 1, "quarter", "half")) return lengthHours(at + 1);
        int from = at;
        OptionalDouble many = OptionalDouble.empty();
        if (is(at, "half", "quarter", "½")) {
            int next = is(at + 1, "of") ? at + 2 : at + 1;
            int unit = after(skipped(next), "unit.h");
            if (unit > skipped(next)) return Optional.of(new Numerals.Spelled(is(at, "quarter") ? 0.25 : 0.5, unit));
            return Optional.empty();
        }
        if (is(at, "three") && is(at + 1, "quarters") && is(at + 2, "of")) {
            int unit = after(skipped(at + 3), "unit.h");
            if (unit > skipped(at + 3)) return Optional.of(new Numerals.Spelled(0.75, unit));
        }
        Optional<Numerals.Spelled> number = number(at);
        if (number.isPresent()) {
            many = OptionalDouble.of(number.get().value());
            from = number.get().until();
        } else if (is(at, "a", "an")) {
            many = OptionalDouble.of(1);
            from = at + 1;
        }
        if (many.isEmpty()) return Optional.empty();
        boolean andAHalf = is(from, "and") && is(from + 1, "a") && is(from + 2, "half");
        if (andAHalf) {
            many = OptionalDouble.of(many.getAsDouble() + 0.5);
            from += 3;
        }
        int minutes = after(from, "unit.min");
        if (minutes > from) return Optional.of(new Numerals.Spelled(many.getAsDouble() / 60, minutes));
        int hours = after(from, "unit.h");
        if (hours == from) return Optional.empty();
        if (is(hours, "and") && is(hours + 1, "a") && is(hours + 2, "half")) {
            return Optional.of(new Numerals.Spelled(many.getAsDouble() + 0.5, hours + 3));
        }
        int next = is(hours, "and") ? hours + 1 : hours;
        Optional<Numerals.Spelled> more = whole(next);
        if (more.isEmpty() || more.get().value() >= 60)
            return Optional.of(new Numerals.Spelled(many.getAsDouble(), hours));
        int end = after(more.get().until(), "unit.min");
        boolean glued = get(next).glued();
        if (end == more.get().until() && !glued) return Optional.of(new Numerals.Spelled(many.getAsDouble(), hours));
        return Optional.of(new Numerals.Spelled(many.getAsDouble() + more.get().value() / 60, end));
    }
}
