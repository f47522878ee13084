package piecewright.desktop.house;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import piecewright.house.LocalHours;

/** A usual week in quarters of an hour, each free or not. A change gives a new week. */
record PaintedWeek(BitSet free) {
    static final int QUARTERS = 96;
    private static final int MINUTES = 15;

    PaintedWeek {
        free = (BitSet) free.clone();
    }

    /** Free quarters that a person's hours touch wholly; hours that end within a quarter lose it. */
    static PaintedWeek of(Map<DayOfWeek, List<LocalHours>> week) {
        BitSet free = new BitSet();
        week.forEach((day, ofDay) -> {
            for (LocalHours hours : ofDay) {
                int from = (hours.fromInclusive().toSecondOfDay() / 60 + MINUTES - 1) / MINUTES;
                int until = hours.untilExclusive().equals(LocalTime.MIDNIGHT)
                        ? QUARTERS
                        : hours.untilExclusive().toSecondOfDay() / 60 / MINUTES;
                if (from < until) free.set(start(day) + from, start(day) + until);
            }
        });
        return new PaintedWeek(free);
    }

    private static int start(DayOfWeek day) {
        return day.ordinal() * QUARTERS;
    }

    double freeHours() {
        return free.cardinality() / 4.0;
    }

    boolean isFree(DayOfWeek day, int quarter) {
        return free.get(start(day) + quarter);
    }

    PaintedWeek freed(DayOfWeek day, int from, int until) {
        BitSet changed = (BitSet) free.clone();
        changed.set(start(day) + from, start(day) + until);
        return new PaintedWeek(changed);
    }

    PaintedWeek taken(DayOfWeek day, int from, int until) {
        BitSet changed = (BitSet) free.clone();
        changed.clear(start(day) + from, start(day) + until);
        return new PaintedWeek(changed);
    }

    /** The week as hours of each day. */
    Map<DayOfWeek, List<LocalHours>> hours() {
        Map<DayOfWeek, List<LocalHours>> week = new EnumMap<>(DayOfWeek.class);
        for (DayOfWeek day : DayOfWeek.values()) week.put(day, hours(day));
        return week;
    }

    List<LocalHours> hours(DayOfWeek day) {
        List<LocalHours> hours = new ArrayList<>();
        int quarter = 0;
        while (quarter < QUARTERS) {
            if (!isFree(day, quarter)) {
                quarter++;
                continue;
            }
            int from = quarter;
            while (quarter < QUARTERS && isFree(day, quarter)) quarter++;
            hours.add(new LocalHours(time(from), time(quarter)));
        }
        return hours;
    }

    static LocalTime time(int quarter) {
        return LocalTime.MIDNIGHT.plusMinutes((long) quarter * MINUTES);
    }

    /** Longest stretch without anybody that begins on each day and may run into the next, in quarters. */
    int longestAway(DayOfWeek day) {
        int longest = 0;
        int run = 0;
        int whole = 7 * QUARTERS;
        for (int at = start(day); at < start(day) + 2 * QUARTERS; at++) {
            boolean away = !free.get(at % whole);
            if (at >= start(day) + QUARTERS && (run == 0 || !away)) break;
            run = away ? run + 1 : 0;
            longest = Math.max(longest, run);
        }
        return longest;
    }
}
