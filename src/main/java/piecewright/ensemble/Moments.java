package piecewright.ensemble;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import piecewright.plan.Availability;
import piecewright.plan.Availability.Stretch;

/** People's hours in minutes after an origin: the first moment somebody can act, and how long somebody stays. */
final class Moments {
    static final int NEVER = Integer.MAX_VALUE / 2;

    private final int[][] own;
    private final int[][] together;

    Moments(Availability availability, Instant origin) {
        this.own = minutes(availability.everyonesStretches(), origin);
        this.together = minutes(availability.stretches(), origin);
    }

    private static int[][] minutes(List<Stretch> stretches, Instant origin) {
        return stretches.stream()
                .map(stretch -> new int[] {minute(origin, stretch.from()), minute(origin, stretch.until())})
                .toArray(int[][]::new);
    }

    static int minute(Instant origin, Instant at) {
        return (int) Math.floorDiv(Duration.between(origin, at).toSeconds(), 60L);
    }

    /** First minute from this one on at which one person has so many minutes; NEVER if there is none. */
    int next(int minute, int workMinutes) {
        int first = NEVER;
        for (int[] stretch : own) {
            int at = Math.max(minute, stretch[0]);
            if (at + workMinutes <= stretch[1]) first = Math.min(first, at);
        }
        return first;
    }

    /** The same where somebody stays for so many minutes, taking turns if they like. */
    int nextAttended(int minute, int workMinutes, int stayMinutes) {
        for (int[] stretch : together) {
            int from = Math.max(minute, stretch[0]);
            if (from + stayMinutes > stretch[1]) continue;
            int at = next(from, workMinutes);
            if (at + stayMinutes <= stretch[1]) return at;
        }
        return NEVER;
    }

    /** Last minute of a span at which one person has so many minutes; NEVER if there is none. */
    int last(int fromMinute, int untilMinute, int workMinutes) {
        int last = -1;
        for (int[] stretch : own) {
            int at = Math.min(untilMinute, stretch[1] - workMinutes);
            if (at >= Math.max(fromMinute, stretch[0])) last = Math.max(last, at);
        }
        return last < 0 ? NEVER : last;
    }

    /** Until when somebody stays from this minute on; the minute itself if nobody is there. */
    int attendedUntil(int minute) {
        for (int[] stretch : together) {
            if (minute >= stretch[0] && minute < stretch[1]) return stretch[1];
        }
        return minute;
    }
}
