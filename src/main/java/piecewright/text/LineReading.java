package piecewright.text;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import piecewright.journal.Report;

/** What one typed line means, or what has to be asked. */
public sealed interface LineReading {
    /**
     * Understood.
     *
     * @param at when it happened
     * @param reports what happened, at least one, in the order they are kept
     */
    record Understood(Instant at, List<Report> reports) implements LineReading {
        public Understood {
            Objects.requireNonNull(at);
            reports = List.copyOf(reports);
            if (reports.isEmpty()) throw new IllegalArgumentException("reports must not be empty");
        }
    }

    /**
     * Not to be understood without asking.
     *
     * @param question one sentence: what is unclear
     * @param choices lines to type instead; empty when only the person can tell
     */
    record Unclear(String question, List<String> choices) implements LineReading {
        public Unclear {
            Objects.requireNonNull(question);
            choices = List.copyOf(choices);
        }
    }
}
