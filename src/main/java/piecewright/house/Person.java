package piecewright.house;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Somebody who tends the grain, and when.
 *
 * @param week hours of each weekday; a day without an entry has none
 * @param exceptions hours of dated days instead of the weekday's; an empty list means away all day
 */
public record Person(String name, Map<DayOfWeek, List<LocalHours>> week, Map<LocalDate, List<LocalHours>> exceptions) {
    public Person {
        Objects.requireNonNull(name);
        week = Map.copyOf(week);
        exceptions = Map.copyOf(exceptions);
    }

    /** Hours of one date. */
    public List<LocalHours> hoursOn(LocalDate date) {
        List<LocalHours> exception = exceptions.get(date);
        return exception != null ? exception : week.getOrDefault(date.getDayOfWeek(), List.of());
    }
}
