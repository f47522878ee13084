package piecewright.reading;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import piecewright.journal.Report;

/** What came of a typed line. */
public sealed interface Outcome {
    /** Understood: to be kept in this order. */
    record Kept(List<Said> said) implements Outcome {
        public Kept {
            said = List.copyOf(said);
            if (said.isEmpty()) throw new IllegalArgumentException("said must not be empty");
        }
    }

    /** One thing understood. */
    record Said(Instant at, Report report) {
        public Said {
            Objects.requireNonNull(at);
            Objects.requireNonNull(report);
        }
    }

    /**
     * To be asked first.
     *
     * @param question one sentence
     * @param offers at most three whole readings; free typing stays open
     */
    record Asked(String question, List<Offer> offers) implements Outcome {
        public Asked {
            Objects.requireNonNull(question);
            offers = List.copyOf(offers);
        }
    }

    /** A reading to choose: the line that says it without a doubt, and what it means in words. */
    record Offer(String line, String words) {}

    /** Nothing of it can be kept: one sentence says why. */
    record Refused(String sentence) implements Outcome {
        public Refused {
            Objects.requireNonNull(sentence);
        }
    }
}
