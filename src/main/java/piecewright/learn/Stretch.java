package piecewright.learn;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.process.PieceState;
import piecewright.process.Stage;

/**
 * One passive phase as it really was: what hands did at its beginning and which stage ran until its end.
 *
 * @param moves the unknowns that change this stretch; none it leaves out may
 */
public record Stretch(Span span, Condition condition, Deed deed, Passing passing, Set<Unknown> moves) {
    public Stretch {
        Objects.requireNonNull(span);
        Objects.requireNonNull(condition);
        Objects.requireNonNull(deed);
        Objects.requireNonNull(passing);
        moves = Set.copyOf(moves);
    }

    /** From and until when; from at most until. */
    public record Span(Instant from, Instant until) {
        public Span {
            if (from.isAfter(until)) throw new IllegalArgumentException("from must not be after until: " + from);
        }
    }

    /**
     * How the grain is kept.
     *
     * @param heat the heater and its dial; empty where nothing heats
     */
    public record Condition(Water water, Optional<Dial> heat) {
        public Condition {
            Objects.requireNonNull(water);
            Objects.requireNonNull(heat);
        }
    }

    /** Whether the piece can gain weight. */
    public enum Water {
        /** Under water, or sprinkled at the beginning. */
        GIVEN,
        /** Not given any: weight can only fall. */
        NONE
    }

    /** A heater set to a temperature, °C, as its dial says. */
    public record Dial(String heater, double dialC) {}

    /** What hands do to a piece at once if the unknowns have these values. */
    public interface Deed {
        PieceState done(Values values, PieceState before);
    }

    /** The stage that runs if the unknowns have these values. */
    public interface Passing {
        Stage stage(Values values);
    }
}
