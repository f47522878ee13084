package piecewright.process.germination;

import java.util.Objects;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/** Green malt growing in a level bed on floor or trays, between two turnings. */
public final class FloorBed implements Stage {
    private final GrowingPiece piece;

    /**
     * @param areaM2 area of all trays together, m², above 0; depth follows from it
     */
    public FloorBed(
            Metabolism metabolism, GrowthParameters parameters, Surroundings surroundings, double areaM2, Cover cover) {
        piece = new GrowingPiece(
                Objects.requireNonNull(metabolism),
                new Bed(parameters),
                Objects.requireNonNull(surroundings),
                areaM2,
                parameters.exposureRatio(cover));
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        return piece.step(start, atHours, stepHours);
    }
}
