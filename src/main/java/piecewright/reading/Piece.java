package piecewright.reading;

import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/** A part of a line that stands for one thing; it reaches from one token to before another. */
sealed interface Piece {
    int from();

    int until();

    /**
     * Words of the vocabulary.
     *
     * @param slipped whether they are only near to it
     */
    record Term(Set<String> keys, String text, boolean slipped, int from, int until) implements Piece {
        /** Families of words that carry nothing unless something looks for them. */
        private static final Set<String> IDLE = Set.of(
                "filler",
                "skip",
                "unit.in",
                "act.roast.weakin",
                "at",
                "since",
                "to",
                "past",
                "after",
                "this",
                "last",
                "plus",
                "again",
                "clock",
                "couple");

        public Term {
            keys = Set.copyOf(keys);
        }

        boolean is(String key) {
            return keys.contains(key);
        }

        /** The first key of a family such as "act.", without its beginning. */
        Optional<String> of(String family) {
            return keys.stream()
                    .filter(key -> key.startsWith(family))
                    .map(key -> key.substring(family.length()))
                    .sorted()
                    .findFirst();
        }

        boolean empty() {
            return IDLE.containsAll(keys);
        }
    }

    /**
     * A figure with its unit, if it has one.
     *
     * @param values what the digits may say: "5,560" is 5.56 or 5560
     * @param digits as typed
     * @param high the upper end of a range
     * @param parts how many weights were summed up to it; 1 for a plain figure
     */
    record Figure(
            List<Double> values,
            String digits,
            Optional<String> unit,
            OptionalDouble high,
            int parts,
            boolean spelled,
            int from,
            int until)
            implements Piece {
        public Figure {
            values = List.copyOf(values);
        }

        double value() {
            return values.get(0);
        }

        boolean whole() {
            return values.get(0) == Math.rint(values.get(0)) && digits.indexOf('.') < 0 && digits.indexOf(',') < 0;
        }

        boolean unit(String... any) {
            return unit.isPresent() && List.of(any).contains(unit.get());
        }

        Figure reaching(int end) {
            return new Figure(values, digits, unit, high, parts, spelled, from, end);
        }

        Figure with(String changed, int end) {
            return new Figure(values, digits, Optional.of(changed), high, parts, spelled, from, end);
        }

        Figure worth(double value, int end) {
            return new Figure(List.of(value), digits, unit, high, parts, spelled, from, end);
        }

        Figure to(double upper, int end) {
            return new Figure(values, digits, unit, OptionalDouble.of(upper), parts, spelled, from, end);
        }

        Figure more(double sum, Optional<String> shared, int end) {
            return new Figure(List.of(sum), digits, shared, high, parts + 1, spelled, from, end);
        }
    }

    /** One of a number: "18 of 20", "3/4". */
    record Ratio(double of, double all, boolean slashed, int from, int until) implements Piece {
        double share() {
            return of / all;
        }
    }

    /** Several figures in a row: "3 8 12 6 1", "41/43/42". */
    record Row(List<Double> values, boolean slashed, int from, int until) implements Piece {
        public Row {
            values = List.copyOf(values);
        }
    }

    /** A part of a time. */
    record Time(Told told, int from, int until) implements Piece {}

    /** A mark between words. */
    record Mark(String sign, int from, int until) implements Piece {}

    /** A word nobody knows. */
    record Unknown(String text, int from, int until) implements Piece {}

    /** What a part of a time says. */
    sealed interface Told {
        /** One of these days. */
        record Day(List<LocalDate> days) implements Told {}

        /** A part of a day. */
        record Part(Hours hours) implements Told {}

        /** A time of day. */
        record Clock(int hour, int minute, Half half, Optional<String> offset) implements Told {}

        /** One of several clocks: "half nine". */
        record Clocks(List<Clock> any) implements Told {}

        /** So long before now; rounded: nobody can tell how long. */
        record Ago(Duration length, boolean rounded) implements Told {}

        /** So long after the roast began. */
        record Into(Duration length) implements Told {}

        record Now() implements Told {}

        /** "earlier". */
        record Vague() implements Told {}

        /** No time of day, no day of the calendar. */
        record Bad(String key, String typed) implements Told {}
    }

    /** Which half of the day a clock's hour is meant in. */
    enum Half {
        AM,
        PM,
        EITHER,
        /** 24 hours. */
        FIXED,
        MIDNIGHT
    }

    /** Parts of a day. */
    enum Hours {
        MORNING,
        AFTERNOON,
        EVENING,
        NIGHT,
        TONIGHT,
        LAST_NIGHT,
        OVERNIGHT
    }
}
