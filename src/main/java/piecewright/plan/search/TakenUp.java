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

    /** Turnings, stirrings and looks at the hot and the wet couch so far. */
    int[] numbers() {
        int turns = Math.max(piece.lastNumber(ActKind.TURN), piece.lastNumber(ActKind.SPRINKLE));
        return new int[] {
            turns, piece.lastNumber(ActKind.STIR), piece.lastNumber(ActKind.CHECK), piece.lastNumber(ActKind.LOOK)
        };
    }

    /** The label to go on from. */
    Label label() {
        Visit began = piece.began();
        int stop = IntStream.range(0, stops.count())
                .filter(each -> stops.id(each).equals(Stops.first(began.id())))
                .findFirst()
                .orElseGet(() -> like(began));
        return new Label(stop, at(piece.standing().at()), grain(), 0, 0, null);
    }

    /** The stop of an act that this style calls otherwise: turned down to a rung, or raised to one that it leaves out. */
    private int like(Visit began) {
        if (began.kind() == ActKind.LOWER) return stops.load() + piece.loweredTo();
        if (began.kind() == ActKind.RAISE)
            return stops.load() + Math.min(began.number(), stops.rungs().size() - 1);
        return IntStream.range(0, stops.count())
                .filter(each -> stops.kind(each) == began.kind())
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException("no stop of this style: " + began.id()));
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
