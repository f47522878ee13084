package piecewright.reading;

import java.util.List;
import java.util.Optional;

/**
 * One reading of a whole line.
 *
 * @param doubt why it must be asked about though nothing else is left; a key of the bundle with its arguments
 * @param halved whether an hour could be in either half of the day
 */
record Candidate(List<Saying> sayings, Optional<Doubt> doubt, boolean halved) {
    Candidate {
        sayings = List.copyOf(sayings);
    }

    record Doubt(String key, List<String> arguments) {
        Doubt {
            arguments = List.copyOf(arguments);
        }

        static Doubt of(String key, String... arguments) {
            return new Doubt(key, List.of(arguments));
        }
    }

    Candidate doubted(Doubt why) {
        return doubt.isPresent() ? this : new Candidate(sayings, Optional.of(why), halved);
    }

    /** Whether two say the same at the same times, whatever the doubts. */
    boolean same(Candidate other) {
        return sayings.equals(other.sayings);
    }
}
