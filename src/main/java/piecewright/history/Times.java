package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.history.Contradiction.Time;
import piecewright.journal.Entry;
import piecewright.plan.Timetable.Visit;

/** Which instants can be true of a batch. Instants of any year are only compared, never counted with. */
final class Times {
    /** Judgement: nobody starts a batch so long before the day its plan says. */
    private static final Duration EARLIER = Duration.ofDays(30);
    /** Judgement: no wet grain waits so long after the plan's last act. */
    private static final Duration LATER = Duration.ofDays(60);
    /** Judgement: nobody rubs the rootlets off or roasts so long after the plan's last act. */
    private static final Duration MALT_LATER = Duration.ofDays(400);
    /** Judgement: a clock may be so far out between two writings. */
    private static final Duration GRACE = Duration.ofMinutes(5);
    /** Judgement: without a plan, a batch is no older than this. */
    private static final Duration OLDEST = Duration.ofDays(400);

    private final Instant earliest;
    private final Instant latestGreen;
    private final Instant latestMalt;
    private final Instant now;
    private final Instant soon;

    Times(List<Visit> planned, Instant now) {
        this.now = now;
        this.soon = now.isAfter(Instant.MAX.minus(GRACE)) ? now : now.plus(GRACE);
        this.earliest = planned.isEmpty()
                ? Instant.MIN.plus(OLDEST).isAfter(now) ? Instant.MIN : now.minus(OLDEST)
                : planned.get(0).at().minus(EARLIER);
        this.latestGreen =
                planned.isEmpty() ? now : planned.get(planned.size() - 1).at().plus(LATER);
        this.latestMalt =
                planned.isEmpty() ? now : planned.get(planned.size() - 1).at().plus(MALT_LATER);
    }

    /** Whether the entry was written, or tells of what will be, after the instant that is asked about. */
    boolean later(Entry entry) {
        return entry.at().isAfter(now) && !isAhead(entry);
    }

    private boolean isAhead(Entry entry) {
        return !entry.writtenAt().isAfter(now) && entry.at().isAfter(soon);
    }

    /** What speaks against the time of an entry that is not later. */
    Optional<Time> against(Entry entry) {
        if (isAhead(entry)) return Optional.of(Time.AHEAD_OF_ITS_WRITING);
        return entry.at().isBefore(earliest) ? Optional.of(Time.BEFORE_THE_BATCH) : Optional.empty();
    }

    /** Until when grain that is not malt yet is followed. */
    Instant followed() {
        return canBeGreen(now) ? now : latestGreen;
    }

    /** Whether grain that is not malt yet can have waited until then. */
    boolean canBeGreen(Instant at) {
        return !at.isAfter(latestGreen);
    }

    /** Until when malt is followed. */
    Instant maltFollowed() {
        return canBeWorked(now) ? now : latestMalt;
    }

    /** Whether anybody can still have worked on the malt then. */
    boolean canBeWorked(Instant at) {
        return !at.isAfter(latestMalt);
    }
}
