package piecewright.plan.search;

import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.process.PieceState;

/**
 * A piece under way, as a search takes it up.
 *
 * @param visits acts done or certain, in time order, at least one
 * @param standing how it lies, at the last act that began a phase or later
 * @param loweredTo the rung its heat was turned down to, where that was the last that began a phase; else 0
 */
public record UnderWay(List<Visit> visits, Standing standing, int loweredTo) {
    public UnderWay {
        visits = List.copyOf(visits);
        Objects.requireNonNull(standing);
        if (visits.isEmpty()) throw new IllegalArgumentException("visits must not be empty");
    }

    private static final Set<ActKind> INNER =
            EnumSet.of(ActKind.LOOK, ActKind.TURN, ActKind.SPRINKLE, ActKind.STIR, ActKind.CHECK);

    /**
     * The piece at an instant.
     *
     * @param slowFraction moisture it would have in a slow kiln, wet basis; its own before the kiln
     */
    public record Standing(Instant at, PieceState state, double slowFraction) {}

    /** The last act that began a phase. */
    Visit began() {
        return began(visits);
    }

    /** The last of these acts that began a phase; at least one did. */
    public static Visit began(List<Visit> visits) {
        return visits.stream()
                .filter(visit -> bounds(visit.kind()))
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    /** When the bed was last moved. */
    Instant turnedAt() {
        Instant last = visits.get(visits.size() - 1).at();
        return last.isAfter(standing.at()) ? last : standing.at();
    }

    /** The highest number of an act of that kind so far. */
    int lastNumber(ActKind kind) {
        return visits.stream()
                .filter(visit -> visit.kind() == kind)
                .mapToInt(Visit::number)
                .max()
                .orElse(0);
    }

    /** Whether acts of this kind lie between phases, not inside one. */
    public static boolean bounds(ActKind kind) {
        return !INNER.contains(kind);
    }
}
