package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One hands-on act.
 *
 * @param id logical and stable across re-plans, such as "steep-1.drain" or "floor.turn-3"; never a time
 * @param work how long somebody is busy, whole minutes
 * @param inner what is done minute by minute, where one person must stay throughout
 */
public record Act(
        String id,
        ActKind kind,
        Instant startsAt,
        Duration work,
        Window window,
        Setting setting,
        Expectation expect,
        List<Caution> cautions,
        Optional<InnerSchedule> inner) {
    public Act {
        Objects.requireNonNull(id);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(startsAt);
        Objects.requireNonNull(work);
        Objects.requireNonNull(window);
        Objects.requireNonNull(setting);
        Objects.requireNonNull(expect);
        cautions = List.copyOf(cautions);
        Objects.requireNonNull(inner);
    }

    /** An act done in one go. */
    public Act(
            String id,
            ActKind kind,
            Instant startsAt,
            Duration work,
            Window window,
            Setting setting,
            Expectation expect,
            List<Caution> cautions) {
        this(id, kind, startsAt, work, window, setting, expect, cautions, Optional.empty());
    }

    public Instant endsAt() {
        return startsAt.plus(work);
    }
}
