package piecewright.plan.search;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay.Standing;
import piecewright.process.PieceState;

/** A piece under way in the terms of one search: its label on that search's candidates. */
final class TakenUp {
    private final UnderWay piece;
    private final Stops stops;
    private final TimeGrid grid;

    /** @param grid holds the instants at which the piece began its phase, was last moved and is taken up */
    TakenUp(UnderWay piece, Stops stops, TimeGrid grid) {
        this.piece = piece;
        this.stops = stops;
        this.grid = grid;
    }

    List<Visit> visits() {
        return piece.visits();
    }

    /** Turnings, stirrings and looks at the couch so far. */
    int[] numbers() {
        int turns = Math.max(piece.lastNumber(ActKind.TURN), piece.lastNumber(ActKind.SPRINKLE));
        return new int[] {turns, piece.lastNumber(ActKind.STIR), piece.lastNumber(ActKind.CHECK)};
    }

    /** The label to go on from. */
    Label label() {
        String id = piece.began().id();
        int stop = IntStream.range(0, stops.count())
                .filter(each -> stops.id(each).equals(id))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no stop of this style: " + id));
        return new Label(stop, at(piece.standing().at()), grain(), 0, 0, null);
    }

    /** The piece if it lies in its hot couch. */
    Optional<Standing> couched() {
        return piece.began().kind() == ActKind.PACK ? Optional.of(piece.standing()) : Optional.empty();
    }

    /** Candidate at which the bed was last moved. */
    int turnedAt() {
        return at(piece.turnedAt());
    }

    private int at(Instant instant) {
        return grid.firstAtOrAfter(grid.minuteOf(instant));
    }

    private Grain grain() {
        PieceState state = piece.standing().state();
        double initialKg = state.mass().initialDryMatterKg();
        double dry = state.mass().dryMatterKg() / initialKg;
        double slow = piece.standing().slowFraction();
        return new Grain(
                state.mass().waterKg() / initialKg,
                state.steep().coreRatio(),
                slow / (1 - slow) * dry,
                state.steep().soakHours(),
                state.steep().chitRatio(),
                state.growth().growthRatio(),
                dry,
                state.grainC());
    }
}
