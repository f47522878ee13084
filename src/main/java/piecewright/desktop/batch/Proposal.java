package piecewright.desktop.batch;

import java.util.List;
import java.util.Optional;
import piecewright.app.BatchAtHand;
import piecewright.desktop.timeline.PieceChart;
import piecewright.replan.ReplanResult;

/**
 * A new plan of the rest beside the old one; no chart where there is no plan.
 *
 * @param batch as it was when the plan was made
 * @param sentences why there is none, or that nothing moves
 */
public record Proposal(
        BatchAtHand batch, ReplanResult result, Optional<PieceChart> chart, List<Moved> moves, List<String> sentences) {
    public Proposal {
        moves = List.copyOf(moves);
        sentences = List.copyOf(sentences);
    }

    /** One act that moves, is new or is dropped: what it is, from when to when, and why; empty texts for no time. */
    public record Moved(String title, String from, String to, String because) {}
}
