package piecewright.replan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;

/** A plan of the rest, or why there is none. */
public sealed interface ReplanResult {
    /** What the journal shows. */
    Happened happened();

    /** What practice does about it. */
    List<Rescue> rescues();

    /**
     * The plan of the whole piece, acts done where they were.
     *
     * @param moves acts to come that stand elsewhere now, in time order; empty when the plan holds
     */
    record Replanned(Plan plan, List<Move> moves, Happened happened, List<Rescue> rescues) implements ReplanResult {
        public Replanned {
            Objects.requireNonNull(plan);
            Objects.requireNonNull(happened);
            moves = List.copyOf(moves);
            rescues = List.copyOf(rescues);
        }
    }

    /**
     * No plan keeps every rule.
     *
     * @param later the plan that comes out when the malt may be ready later than wished, searched for and found
     */
    record NotPossible(List<Obstacle> obstacles, Optional<Plan> later, Happened happened, List<Rescue> rescues)
            implements ReplanResult {
        public NotPossible {
            Objects.requireNonNull(later);
            Objects.requireNonNull(happened);
            obstacles = List.copyOf(obstacles);
            rescues = List.copyOf(rescues);
        }
    }

    default <T> T match(Function<Replanned, T> replanned, Function<NotPossible, T> notPossible) {
        return this instanceof Replanned r ? replanned.apply(r) : notPossible.apply((NotPossible) this);
    }
}
