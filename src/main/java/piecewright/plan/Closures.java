package piecewright.plan;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import piecewright.plan.Availability.Stretch;

/** When kit chosen for a piece is in the use of others. */
public record Closures(Map<Use, List<Stretch>> taken) {
    public Closures {
        taken = Map.copyOf(taken);
    }

    /** What a piece needs kit for. */
    public enum Use {
        SOAKING,
        GROWING,
        WITHERING,
        COUCH,
        DRYING,
        CURING,
        STEWING,
        ROASTING
    }

    /** Everything is free always. */
    public static Closures none() {
        return new Closures(Map.of());
    }

    public boolean isEmpty() {
        return taken.isEmpty();
    }

    /** Whether nobody else uses that kit in [from, until). */
    public boolean free(Use use, Instant from, Instant until) {
        return taken.getOrDefault(use, List.of()).stream()
                .noneMatch(stretch ->
                        from.isBefore(stretch.until()) && stretch.from().isBefore(until));
    }
}
