package piecewright.house;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * A stretch as a clock on the wall shows it. Where the clock jumps, what it never shows is no part of it, and what it shows
 * twice is part of it twice.
 */
public record LocalSpan(LocalDateTime fromInclusive, LocalDateTime untilExclusive) {
    public LocalSpan {
        Objects.requireNonNull(fromInclusive);
        Objects.requireNonNull(untilExclusive);
    }

    /** A half-open stretch of time. */
    public record Lasting(Instant from, Instant until) {
        public Lasting {
            Objects.requireNonNull(from);
            Objects.requireNonNull(until);
        }
    }

    /** When the clock shows it, in time order and joined where nothing lies between; none where it is skipped whole. */
    public List<Lasting> lasting(ZoneRules rules) {
        List<Lasting> lasting = new ArrayList<>();
        Instant end = untilExclusive.toInstant(ZoneOffset.MIN);
        Instant from = fromInclusive.toInstant(ZoneOffset.MAX);
        while (from.isBefore(end)) {
            ZoneOffsetTransition next = rules.nextTransition(from);
            Instant until = next == null || next.getInstant().isAfter(end) ? end : next.getInstant();
            ZoneOffset offset = rules.getOffset(from);
            add(lasting, later(from, fromInclusive.toInstant(offset)), sooner(until, untilExclusive.toInstant(offset)));
            from = until;
        }
        return List.copyOf(lasting);
    }

    private static void add(List<Lasting> lasting, Instant from, Instant until) {
        if (!from.isBefore(until)) return;
        int last = lasting.size() - 1;
        boolean goesOn = last >= 0 && lasting.get(last).until().equals(from);
        if (goesOn) lasting.set(last, new Lasting(lasting.get(last).from(), until));
        else lasting.add(new Lasting(from, until));
    }

    private static Instant later(Instant one, Instant other) {
        return one.isAfter(other) ? one : other;
    }

    private static Instant sooner(Instant one, Instant other) {
        return one.isBefore(other) ? one : other;
    }
}
