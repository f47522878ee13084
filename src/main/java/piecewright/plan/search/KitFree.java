package piecewright.plan.search;

import java.time.Instant;
import piecewright.plan.ActKind;
import piecewright.plan.Closures;
import piecewright.plan.Closures.Use;

/** Keeps a piece off kit while other batches use it: one question for each step from stop to stop. */
final class KitFree {
    private final Closures closures;
    private final Stops stops;
    private final TimeGrid grid;

    KitFree(Closures closures, Stops stops, TimeGrid grid) {
        this.closures = closures;
        this.stops = stops;
        this.grid = grid;
    }

    boolean always() {
        return closures.isEmpty();
    }

    /** Whether the kit is free from one stop until the work of the next is done. */
    boolean lets(Label label, Label next) {
        Instant from = grid.instant(label.at());
        Instant then = grid.instant(next.at());
        Instant done = then.plusSeconds(60L * stops.workMinutes(next.stop()));
        ActKind nextKind = stops.kind(next.stop());
        boolean block = switch (nextKind) {
            case LOAD -> stops.stewMinutes() == 0 || closures.free(Use.STEWING, then, done);
            case ROAST -> closures.free(Use.ROASTING, then, done);
            default -> true;
        };
        return block && during(stops.kind(label.stop()), from, done);
    }

    private boolean during(ActKind kind, Instant from, Instant until) {
        return switch (kind) {
            case SOAK, DRAIN -> closures.free(Use.SOAKING, from, until);
            case FLOOR -> closures.free(Use.GROWING, from, until);
            case WITHER, BREAK -> closures.free(Use.WITHERING, from, until);
            case PACK -> closures.free(Use.COUCH, from, until);
            case LOAD, RAISE -> closures.free(Use.DRYING, from, until);
            case CURE -> closures.free(Use.CURING, from, until);
            default -> true;
        };
    }
}
