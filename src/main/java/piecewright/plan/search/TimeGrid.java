package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import piecewright.plan.Availability;
import piecewright.plan.Availability.Stretch;

/**
 * The candidate instants at which an act may begin, as minutes since an origin: a coarse
 * and a fine grid inside hours, closer in short stretches, each stretch's first instant and its last that still fits an
 * act. Each candidate knows how long somebody can work from it and what its hour costs.
 */
public final class TimeGrid {
    /** Judgement: an act before this local time is unsociable. */
    private static final LocalTime SOCIABLE_FROM = LocalTime.of(7, 0);
    /** Judgement: an act after this local time is unsociable. */
    private static final LocalTime SOCIABLE_UNTIL = LocalTime.of(22, 0);
    /** Judgement: an unsociable hour costs as much as a quarter of an hour of work, per hour away from daytime. */
    private static final double UNSOCIABLE_COST_MINUTES_PER_HOUR = 15;
    /** Judgement: getting up at night costs as much as two hours of work. */
    private static final double NIGHT_ACT_COST_MINUTES = 120;
    /** Judgement: stretches up to this long count as short. */
    private static final int SHORT_STRETCH_MINUTES = 75;
    /** Minutes per entry of the table that finds candidates by time. */
    private static final int SLOT_MINUTES = 15;
    /** Lengths of work, minutes, for which a stretch's last fitting instant is a candidate of the coarse grid. */
    private static final int[] LENGTHS_MINUTES = {15, 30};
    /** The same, of the fine grid: what is done at the kiln. */
    private static final int[] KILN_LENGTHS_MINUTES = {10, 20, 40};
    /** Judgement: short stretches are looked at every half hour. */
    private static final int SHORT_STEP_MINUTES = 30;

    private final Instant origin;
    private final TreeMap<Integer, Boolean> points;
    private final Availability availability;
    private final ZoneId zone;
    private final int[] minute;
    private final boolean[] coarse;
    private final int[] nextCoarse;
    private final int[] coarseRank;
    private final int[] coarseAt;
    private final int[] firstInSlot;
    private final boolean[] night;
    private final int[] workableMinutes;
    private final int[] attendedUntil;
    private final double[] unsociable;
    private final int openMinute;

    private TimeGrid(Instant origin, TreeMap<Integer, Boolean> points, Availability availability, ZoneId zone) {
        this(origin, points, availability, zone, 0, 0);
    }

    private TimeGrid(
            Instant origin,
            TreeMap<Integer, Boolean> points,
            Availability availability,
            ZoneId zone,
            int openMinute,
            int freeMinute) {
        this.origin = origin;
        this.points = points;
        this.availability = availability;
        this.zone = zone;
        int size = points.size();
        minute = new int[size];
        coarse = new boolean[size];
        night = new boolean[size];
        workableMinutes = new int[size];
        attendedUntil = new int[size];
        unsociable = new double[size];
        nextCoarse = new int[size + 2];
        int at = 0;
        for (var point : points.entrySet()) {
            minute[at] = point.getKey();
            coarse[at] = point.getValue();
            describe(at);
            if (minute[at] < Math.max(openMinute, freeMinute)) close(at);
            at++;
        }
        firstInSlot = new int[size == 0 ? 0 : minute[size - 1] / SLOT_MINUTES + 1];
        for (int slot = 0, next = 0; slot < firstInSlot.length; slot++) {
            while (minute[next] < slot * SLOT_MINUTES) next++;
            firstInSlot[slot] = next;
        }
        nextCoarse[size + 1] = size;
        nextCoarse[size] = size;
        for (int i = size - 1; i >= 0; i--) nextCoarse[i] = coarse[i] ? i : nextCoarse[i + 1];
        coarseRank = new int[size + 2];
        for (int i = 0; i < size; i++) coarseRank[i + 1] = coarseRank[i] + (coarse[i] ? 1 : 0);
        coarseRank[size + 1] = coarseRank[size];
        coarseAt = new int[coarseRank[size]];
        for (int i = 0; i < size; i++) if (coarse[i]) coarseAt[coarseRank[i]] = i;
        this.openMinute = openMinute;
    }

    private void describe(int at) {
        Instant instant = instant(at);
        Optional<Instant> workable = availability.workableUntil(instant);
        Optional<Instant> nightUntil = availability.nightUntil(instant);
        night[at] = workable.isEmpty() && nightUntil.isPresent();
        Instant until = workable.or(() -> nightUntil).orElse(instant);
        workableMinutes[at] = minutesBetween(instant, until);
        attendedUntil[at] = minute[at]
                + minutesBetween(instant, availability.attendedUntil(instant).orElse(instant));
        unsociable[at] =
                unsociableCostMinutes(LocalTime.ofInstant(instant, zone)) + (night[at] ? NIGHT_ACT_COST_MINUTES : 0);
    }

    /** No act begins here any more. */
    private void close(int at) {
        workableMinutes[at] = -1;
        night[at] = false;
        unsociable[at] = 0;
    }

    /**
     * The same for a piece under way: nothing begins before that instant, whole minutes counted up.
     *
     * @param free nor before this: until then an act that is certain keeps its person busy
     * @param past instants before it that are still spoken of
     * @param besides candidates besides the grid's where somebody can act, such as where acts stand already
     */
    public TimeGrid goingOn(Instant notBefore, Instant free, List<Instant> past, List<Instant> besides) {
        int open = minutesBetween(origin, notBefore.plusSeconds(59));
        TreeMap<Integer, Boolean> more = new TreeMap<>(points.tailMap(open, true));
        for (Instant instant : past) putInside(more, minutesBetween(origin, instant), true, Integer.MAX_VALUE);
        for (Instant instant : besides) {
            boolean somebody = availability.workableUntil(instant).isPresent()
                    || availability.nightUntil(instant).isPresent();
            int at = minutesBetween(origin, instant);
            if (somebody && at >= open) putInside(more, at, true, Integer.MAX_VALUE);
        }
        return new TimeGrid(origin, more, availability, zone, open, minutesBetween(origin, free.plusSeconds(59)));
    }

    /** All candidates of the horizon; {@code coarseMinutes} and {@code fineMinutes} are the two grids, 5 or more. */
    public static TimeGrid of(
            Availability availability, ZoneId zone, Instant origin, Instant until, int coarseMinutes, int fineMinutes) {
        TreeMap<Integer, Boolean> points = new TreeMap<>();
        int horizon = minutesBetween(origin, until);
        for (Stretch stretch : availability.everyonesStretches()) {
            addStretch(
                    points, minutesBetween(origin, stretch.from()), minutesBetween(origin, stretch.until()), new int[] {
                        horizon, coarseMinutes, fineMinutes
                    });
        }
        for (Stretch stretch : availability.nights()) {
            int from = minutesBetween(origin, stretch.from());
            int end = minutesBetween(origin, stretch.until());
            for (int at = from; at < end; at += 2 * coarseMinutes) putInside(points, at, true, horizon);
        }
        return new TimeGrid(origin, points, availability, zone);
    }

    /** Candidates every so many minutes within so many of given instants, where somebody can act: to polish a timetable. */
    public static TimeGrid near(
            Availability availability,
            ZoneId zone,
            Instant origin,
            List<Instant> instants,
            int withinMinutes,
            int stepMinutes) {
        TreeMap<Integer, Boolean> points = new TreeMap<>();
        for (Instant instant : instants) {
            int middle = minutesBetween(origin, instant);
            for (int at = middle - withinMinutes; at <= middle + withinMinutes; at += stepMinutes) {
                Instant candidate = origin.plus(Duration.ofMinutes(at));
                boolean somebody = availability.workableUntil(candidate).isPresent()
                        || availability.nightUntil(candidate).isPresent();
                if (somebody) putInside(points, at, true, Integer.MAX_VALUE);
            }
        }
        return new TimeGrid(origin, points, availability, zone);
    }

    private static void addStretch(TreeMap<Integer, Boolean> points, int from, int end, int[] grid) {
        int coarseStep = end - from <= SHORT_STRETCH_MINUTES ? Math.min(grid[1], SHORT_STEP_MINUTES) : grid[1];
        for (int at = from; at < end; at += grid[2]) putInside(points, at, false, grid[0]);
        for (int at = from; at < end; at += coarseStep) putInside(points, at, true, grid[0]);
        lasts(points, from, end, LENGTHS_MINUTES, grid[0], true);
        lasts(points, from, end, KILN_LENGTHS_MINUTES, grid[0], false);
    }

    private static void lasts(
            TreeMap<Integer, Boolean> points, int from, int end, int[] lengths, int horizon, boolean isCoarse) {
        for (int length : lengths) {
            if (end - length >= from) putInside(points, end - length, isCoarse, horizon);
        }
    }

    private static void putInside(TreeMap<Integer, Boolean> points, int at, boolean isCoarse, int horizon) {
        if (at >= 0 && at < horizon) points.merge(at, isCoarse, Boolean::logicalOr);
    }

    /** What the local hour of an act costs, cost-minutes. */
    static double unsociableCostMinutes(LocalTime time) {
        double earlyHours = Duration.between(time, SOCIABLE_FROM).toMinutes() / 60.0;
        double lateHours = Duration.between(SOCIABLE_UNTIL, time).toMinutes() / 60.0;
        return UNSOCIABLE_COST_MINUTES_PER_HOUR * Math.max(0, Math.max(earlyHours, lateHours));
    }

    private static int minutesBetween(Instant from, Instant until) {
        return (int) Duration.between(from, until).toMinutes();
    }

    public Instant origin() {
        return origin;
    }

    public int size() {
        return minute.length;
    }

    /** Minutes from the origin to an instant. */
    int minuteOf(Instant instant) {
        return minutesBetween(origin, instant);
    }

    /** Minutes since the origin. */
    public int minute(int at) {
        return minute[at];
    }

    public Instant instant(int at) {
        return origin.plus(Duration.ofMinutes(minute[at]));
    }

    /** Whether the coarse grid holds this candidate. */
    boolean coarse(int at) {
        return coarse[at];
    }

    /** The first coarse candidate at or after this one, at most size() + 1; size() when there is none. */
    int nextCoarse(int at) {
        return nextCoarse[at];
    }

    /** How many candidates the coarse grid holds. */
    int coarseSize() {
        return coarseAt.length;
    }

    /** How many coarse candidates come before this one, at most size() + 1. */
    int coarseRank(int at) {
        return coarseRank[at];
    }

    /** The coarse candidate before which so many others come, less than coarseSize(). */
    int coarseAt(int rank) {
        return coarseAt[rank];
    }

    /** Whether an act here is a night act. */
    boolean night(int at) {
        return night[at];
    }

    /** Whether one person can work so long from here without a break. */
    boolean fits(int at, int workMinutes) {
        return workableMinutes[at] >= workMinutes;
    }

    /** Minute until which somebody stays near; the candidate's own minute when nobody is. */
    int attendedUntil(int at) {
        return attendedUntil[at];
    }

    /** Cost of this hour, cost-minutes. */
    double unsociableCostMinutes(int at) {
        return unsociable[at];
    }

    /** Minute from which on acts may still begin. */
    int openMinute() {
        return openMinute;
    }

    /** Minute until which somebody stays near from now on, or who is there next from then on. */
    int attendedFromOpen() {
        Instant open = origin.plus(Duration.ofMinutes(openMinute));
        int next = firstAtOrAfter(openMinute);
        return availability
                .attendedUntil(open)
                .map(until -> minutesBetween(origin, until))
                .orElse(next < size() ? attendedUntil[next] : openMinute);
    }

    /** Index of the first candidate at or after the minute; size() when there is none. */
    public int firstAtOrAfter(int sinceOrigin) {
        if (sinceOrigin <= 0) return 0;
        int slot = sinceOrigin / SLOT_MINUTES;
        if (slot >= firstInSlot.length) return minute.length;
        int at = firstInSlot[slot];
        while (at < minute.length && minute[at] < sinceOrigin) at++;
        return at;
    }
}
