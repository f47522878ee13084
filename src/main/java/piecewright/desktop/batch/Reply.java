package piecewright.desktop.batch;

import java.util.ArrayList;
import java.util.List;

/**
 * What came of a typed line.
 *
 * @param doubts what is asked about what was kept
 * @param choices answers to a question asked back
 */
public record Reply(Outcome outcome, List<String> sentences, List<String> doubts, List<String> choices) {
    /** What became of it. */
    public enum Outcome {
        NOTHING,
        KEPT,
        ASKED,
        FAILED
    }

    public Reply {
        sentences = List.copyOf(sentences);
        doubts = List.copyOf(doubts);
        choices = List.copyOf(choices);
    }

    static Reply nothing() {
        return new Reply(Outcome.NOTHING, List.of(), List.of(), List.of());
    }

    static Reply asking(String question) {
        return new Reply(Outcome.ASKED, List.of(), List.of(question), List.of());
    }

    /** The same, and what went wrong after it was kept. */
    Reply doubting(Exception failure) {
        List<String> all = new ArrayList<>(doubts);
        all.add(String.valueOf(failure.getMessage()));
        return new Reply(outcome, sentences, all, choices);
    }

    static Reply failed(Exception failure) {
        return new Reply(Outcome.FAILED, List.of(), List.of(String.valueOf(failure.getMessage())), List.of());
    }
}
