package piecewright.plan;

import java.time.Instant;

/**
 * When an act may happen once the one before it happened as planned: free of harm from earliest to latest, at growing
 * cost to hardLatest, never later.
 */
public record Window(Instant earliest, Instant latest, Instant hardLatest) {
    public Window {
        if (earliest.isAfter(latest) || latest.isAfter(hardLatest)) {
            throw new IllegalArgumentException(
                    "need earliest <= latest <= hardLatest: " + earliest + ", " + latest + ", " + hardLatest);
        }
    }
}
