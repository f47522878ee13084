package piecewright.process.germination;

import java.util.Objects;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.Surroundings;

/** A steeped piece in the wet couch: it chits, breathes and warms itself under a damp cloth. */
public final class WetHeap implements Stage {
    private final GrowingPiece piece;

    public WetHeap(Metabolism metabolism, GrowthParameters parameters, Surroundings surroundings, Heap heap) {
        piece = new GrowingPiece(
                Objects.requireNonNull(metabolism),
                new Bed(parameters),
                Objects.requireNonNull(surroundings),
                heap,
                parameters.exposureRatio(Cover.DAMP_CLOTH));
    }

    @Override
    public PieceState step(PieceState start, double atHours, double stepHours) {
        return piece.step(start, atHours, stepHours);
    }
}
