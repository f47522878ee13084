package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;

/**
 * One hands-on act.
 *
 * @param id logical and stable across re-plans, such as "steep-1.drain" or "floor.turn-3"; never a time
 * @param work how long somebody is busy, whole minutes
 */
public record Act(
        String id,
        ActKind kind,
        Instant startsAt,
        Duration work,
        Window window,
        Setting setting,
        Expectation expect,
        List<Caution> cautions) {
    public Act {
        Objects.requireNonNull(id);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(startsAt);
        Objects.requireNonNull(work);
        Objects.requireNonNull(window);
        Objects.requireNonNull(setting);
        Objects.requireNonNull(expect);
        cautions = List.copyOf(cautions);
    }

    public Instant endsAt() {
        return startsAt.plus(work);
    }
}
