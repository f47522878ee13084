package piecewright.house;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Objects;

/**
 * Night acts somebody would get up for, if it must be.
 *
 * @param most how many per batch, 0 for none
 * @param from start of the night, local; may be later than until, which is then on the next day
 */
public record NightActs(int most, LocalTime from, LocalTime until) {
    public NightActs {
        Objects.requireNonNull(from);
        Objects.requireNonNull(until);
        if (most < 0 || most > 20) throw new IllegalArgumentException("most must be in 0..20: " + most);
    }

    public static NightActs none() {
        return new NightActs(0, LocalTime.of(22, 0), LocalTime.of(6, 0));
    }

    /** The night that begins on this day. */
    public LocalSpan on(LocalDate day) {
        return new LocalSpan(day.atTime(from), (until.isAfter(from) ? day : day.plusDays(1)).atTime(until));
    }
}
