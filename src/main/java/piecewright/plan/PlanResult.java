package piecewright.plan;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;

/** A plan, or why there is none. */
public sealed interface PlanResult permits PlanResult.Planned, PlanResult.NotPossible {
    record Planned(Plan plan) implements PlanResult {
        public Planned {
            Objects.requireNonNull(plan);
        }
    }

    record NotPossible(List<Obstacle> obstacles) implements PlanResult {
        public NotPossible {
            obstacles = List.copyOf(obstacles);
            if (obstacles.isEmpty()) throw new IllegalArgumentException("obstacles must not be empty");
        }
    }

    default <T> T match(Function<Planned, T> planned, Function<NotPossible, T> notPossible) {
        return this instanceof Planned p ? planned.apply(p) : notPossible.apply((NotPossible) this);
    }
}
