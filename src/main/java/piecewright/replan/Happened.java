package piecewright.replan;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.journal.Entry;
import piecewright.plan.Found;
import piecewright.plan.Timetable.Visit;

/**
 * What is held to have happened to a piece.
 *
 * @param visits acts done, in time order
 * @param entryByAct the entry that tells of an act, by act id
 * @param assumed acts nobody wrote down that must have been done, because a later one was; taken as planned
 * @param entryByReading the entries of the readings found, in their order
 * @param questions entries in doubt, left out of everything else
 * @param signs what was seen, smelt or happened, in time order
 */
public record Happened(
        List<Visit> visits,
        Map<String, Integer> entryByAct,
        List<String> assumed,
        Found found,
        List<Integer> entryByReading,
        List<Question> questions,
        List<Entry> signs) {
    public Happened {
        visits = List.copyOf(visits);
        entryByAct = Map.copyOf(entryByAct);
        assumed = List.copyOf(assumed);
        entryByReading = List.copyOf(entryByReading);
        questions = List.copyOf(questions);
        signs = List.copyOf(signs);
    }

    /** What a batch's journal tells of until now. */
    public static Happened in(Batch batch, Instant now) {
        return Chronicle.of(batch, batch.journal().vessels(), now);
    }

    /** Whether the act was done. */
    public boolean did(String actId) {
        return visits.stream().anyMatch(visit -> visit.id().equals(actId));
    }

    /** The last act done. */
    public Optional<Visit> last() {
        return visits.isEmpty() ? Optional.empty() : Optional.of(visits.get(visits.size() - 1));
    }
}
