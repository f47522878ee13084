package piecewright.reading;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.reading.Standing.Done;

/** Which step can have been when, beside those written down: by what it must follow and what must follow it. */
final class Order {
    private Order() {}

    /** How a step fits. */
    enum Fit {
        FINE,
        /** What it must follow is not written down. */
        MISSING,
        /** What it must follow was later. */
        EARLY,
        /** What can be only after it was before. */
        LATE
    }

    static Fit of(ActKind kind, Instant at, Standing standing) {
        List<Done> before = standing.before(at);
        List<Done> after = standing.after(at);
        if (before.stream().anyMatch(act -> rank(act.kind()) > last(kind))) return Fit.LATE;
        if (after.stream().anyMatch(act -> rank(act.kind()) < rank(kind))) return Fit.EARLY;
        if (kind == ActKind.SOAK || kind == ActKind.DRAIN) return steep(kind, at, standing);
        boolean once = once(kind) && standing.acts().stream().anyMatch(act -> act.kind() == kind && !(act.begun()));
        if (once) return Fit.LATE;
        Optional<ActKind> needed = needed(kind);
        if (needed.isEmpty() || before.stream().anyMatch(act -> rank(act.kind()) >= rank(needed.get())))
            return Fit.FINE;
        return after.stream().anyMatch(act -> act.kind() == needed.get()) ? Fit.EARLY : Fit.MISSING;
    }

    private static Fit steep(ActKind kind, Instant at, Standing standing) {
        Optional<Done> last = standing.lastOf(at, ActKind.SOAK, ActKind.DRAIN);
        Optional<Done> next = standing.after(at).stream()
                .filter(act -> act.kind() == ActKind.SOAK || act.kind() == ActKind.DRAIN)
                .findFirst();
        if (kind == ActKind.DRAIN) {
            boolean drained = next.filter(act -> act.kind() == ActKind.DRAIN).isPresent();
            if (last.isEmpty()) return next.isPresent() ? Fit.EARLY : Fit.MISSING;
            if (last.get().kind() == ActKind.DRAIN) return next.isPresent() ? Fit.EARLY : Fit.MISSING;
            return drained ? Fit.LATE : Fit.FINE;
        }
        if (next.filter(act -> act.kind() == ActKind.SOAK).isPresent()) return Fit.EARLY;
        return last.filter(act -> act.kind() == ActKind.SOAK).isPresent() ? Fit.MISSING : Fit.FINE;
    }

    private static boolean once(ActKind kind) {
        return switch (kind) {
            case FLOOR, WITHER, PACK, BREAK, LOAD, CURE, OFF, DEROOT -> true;
            default -> false;
        };
    }

    private static Optional<ActKind> needed(ActKind kind) {
        return switch (kind) {
            case SOAK, DRAIN, STEW -> Optional.empty();
            case HEAP, LOOK, FLOOR -> Optional.of(ActKind.DRAIN);
            case TURN, SPRINKLE, WITHER, PACK, LOAD -> Optional.of(ActKind.FLOOR);
            case CHECK, BREAK -> Optional.of(ActKind.PACK);
            case STIR, RAISE, LOWER, CURE, OFF -> Optional.of(ActKind.LOAD);
            case DEROOT, ROAST -> Optional.of(ActKind.OFF);
        };
    }

    /** A step comes after those of lower rank. */
    private static int rank(ActKind kind) {
        return switch (kind) {
            case SOAK, DRAIN -> 0;
            case HEAP, LOOK -> 1;
            case FLOOR, TURN, SPRINKLE -> 2;
            case WITHER -> 3;
            case PACK, CHECK -> 4;
            case BREAK -> 5;
            case STEW -> 6;
            case LOAD, STIR, RAISE, LOWER -> 7;
            case CURE -> 8;
            case OFF -> 9;
            case DEROOT -> 10;
            case ROAST -> 11;
        };
    }

    /** The last rank beside which a step can be. */
    private static int last(ActKind kind) {
        return switch (kind) {
            case TURN, SPRINKLE -> 3;
            case STIR, RAISE, LOWER -> 8;
            case DEROOT -> 11;
            default -> rank(kind);
        };
    }
}
