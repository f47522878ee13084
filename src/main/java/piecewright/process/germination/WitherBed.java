package piecewright.process.germination;

import java.util.Objects;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/** Green malt spread thin and bare in quiet air to lose water before couch or kiln; it goes on growing more slowly. */
public final class WitherBed implements Stage {
    private final GrowingPiece piece;

    /**
     * @param areaM2 area it is spread on, m², above 0; depth follows from it
     */
    public WitherBed(Metabolism metabolism, GrowthParameters parameters, Surroundings surroundings, double areaM2) {
        piece = new GrowingPiece(
                Objects.requireNonNull(metabolism),
                new Bed(parameters),
                Objects.requireNonNull(surroundings),
                areaM2,
                1);
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        return piece.step(start, atHours, stepHours);
    }
}
