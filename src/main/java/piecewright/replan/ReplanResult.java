package piecewright.replan;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import piecewright.history.Account;
import piecewright.plan.Finding;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.remedy.Remedy;

/** A plan of the rest, or why there is none. */
public sealed interface ReplanResult {
    /** What the journal shows. */
    Account account();

    /** What practice does about it. */
    List<Rescue> rescues();

    /**
     * The plan of the whole piece, acts done where they were.
     *
     * @param moves acts to come that stand elsewhere now, in time order; empty when the plan holds
     * @param amends what had to give way, and what would win it back
     */
    record Replanned(Plan plan, List<Move> moves, Amends amends, Account account, List<Rescue> rescues)
            implements ReplanResult {
        public Replanned {
            Objects.requireNonNull(amends);
            Objects.requireNonNull(plan);
            Objects.requireNonNull(account);
            moves = List.copyOf(moves);
            rescues = List.copyOf(rescues);
        }
    }

    /**
     * What the best that can still be done gives up, where nothing keeps all that style and wish ask.
     *
     * @param lost empty when nothing is
     * @param remedies changes with which nothing would be, each planned before it is offered
     */
    record Amends(List<Finding> lost, List<Remedy> remedies) {
        public Amends {
            lost = List.copyOf(lost);
            remedies = List.copyOf(remedies);
        }
    }

    /**
     * No plan keeps every rule.
     *
     * @param remedies changes that help, each planned before it is offered
     */
    record NotPossible(List<Obstacle> obstacles, List<Remedy> remedies, Account account, List<Rescue> rescues)
            implements ReplanResult {
        public NotPossible {
            remedies = List.copyOf(remedies);
            Objects.requireNonNull(account);
            obstacles = List.copyOf(obstacles);
            rescues = List.copyOf(rescues);
        }
    }

    default <T> T match(Function<Replanned, T> replanned, Function<NotPossible, T> notPossible) {
        return this instanceof Replanned r ? replanned.apply(r) : notPossible.apply((NotPossible) this);
    }
}
