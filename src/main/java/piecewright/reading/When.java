package piecewright.reading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.reading.Piece.Hours;
import piecewright.reading.Piece.Told;
import piecewright.reading.Piece.Told.Clock;

/** One time as it was said, put together from its parts. Immutable. */
record When(
        List<LocalDate> days,
        Optional<Hours> hours,
        List<Clock> clocks,
        Optional<Told.Ago> ago,
        Optional<Told.Into> into,
        boolean now,
        boolean vague) {
    When {
        days = List.copyOf(days);
        clocks = List.copyOf(clocks);
    }

    static When unsaid() {
        return new When(List.of(), Optional.empty(), List.of(), Optional.empty(), Optional.empty(), false, false);
    }

    static When clock(Clock clock) {
        return new When(List.of(), Optional.empty(), List.of(clock), Optional.empty(), Optional.empty(), false, false);
    }

    boolean said() {
        return !days.isEmpty() || hours.isPresent() || exact() || vague;
    }

    /** Whether it names a time of day, or now. */
    boolean exact() {
        return !clocks.isEmpty() || ago.isPresent() || into.isPresent() || now;
    }

    /** This time with one part more; empty where that part begins another time. */
    Optional<When> with(Told told) {
        if (told instanceof Told.Day day) {
            return days.isEmpty() && ago.isEmpty()
                    ? Optional.of(new When(day.days(), hours, clocks, ago, into, now, vague))
                    : Optional.empty();
        }
        if (told instanceof Told.Part part) {
            return hours.isEmpty() && ago.isEmpty()
                    ? Optional.of(new When(days, Optional.of(part.hours()), clocks, ago, into, now, vague))
                    : Optional.empty();
        }
        if (told instanceof Told.Vague) return Optional.of(new When(days, hours, clocks, ago, into, now, true));
        if (exact()) return Optional.empty();
        if (told instanceof Clock clock)
            return Optional.of(new When(days, hours, List.of(clock), ago, into, now, vague));
        if (told instanceof Told.Clocks several) {
            return Optional.of(new When(days, hours, several.any(), ago, into, now, vague));
        }
        if (told instanceof Told.Ago length) {
            return Optional.of(new When(days, hours, clocks, Optional.of(length), into, now, vague));
        }
        if (told instanceof Told.Into length) {
            return Optional.of(new When(days, hours, clocks, ago, Optional.of(length), now, vague));
        }
        return Optional.of(new When(days, hours, clocks, ago, into, true, vague));
    }

    /** The times said one after the other. */
    static List<When> all(List<Told> parts) {
        List<When> all = new ArrayList<>();
        When open = unsaid();
        for (Told part : parts) {
            Optional<When> more = open.with(part);
            if (more.isEmpty()) {
                all.add(open);
                more = unsaid().with(part);
            }
            open = more.orElseThrow();
        }
        if (open.said()) all.add(open);
        return all;
    }
}
