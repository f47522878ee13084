package piecewright.desktop.batch;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.app.BatchAtHand;
import piecewright.app.CalendarManner;
import piecewright.app.CalendarPage;
import piecewright.app.Keeping;
import piecewright.app.NotWrittenException;
import piecewright.desktop.timeline.PieceChart;
import piecewright.replan.ReplanResult;
import piecewright.replan.ReplanResult.Replanned;
import piecewright.store.StoreException;
import piecewright.text.DisplayUnits;
import piecewright.text.WindowWords;

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

    /** Keeps the new plan; what its calendars were told, or that they know nothing of it yet. */
    String accepted(Replanned replanned, DisplayUnits units, Instant now) throws StoreException, NotWrittenException {
        CalendarManner manner = CalendarManner.of(List.of(batch.file()), units);
        return told(batch.accept(replanned, Optional.empty(), manner, now), units);
    }

    /** What calendars were told, in the words of a window. */
    static String told(Keeping.Kept kept, DisplayUnits units) {
        String told = new CalendarPage(units.locale()).noted(kept);
        return told.isEmpty() ? WindowWords.say("batch.calendar-behind") : told;
    }

    /** One act that moves, is new or is dropped: what it is, from when to when or from which place to which, and why; empty texts for no time. */
    public record Moved(String title, String from, String to, String because) {}
}
