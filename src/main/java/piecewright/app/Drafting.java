package piecewright.app;

import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.store.StoreException;

/** Answers wishes as they are being said. */
public final class Drafting {
    private final Function<PlanRequest, PlanResult> planner;

    public Drafting(Function<PlanRequest, PlanResult> planner) {
        this.planner = planner;
    }

    /** What became of a wish. */
    public sealed interface Answer {
        /** A plan or why there is none. */
        record Read(ReadWish wish, PlanResult result) implements Answer {
            public Read {
                Objects.requireNonNull(wish);
                Objects.requireNonNull(result);
            }
        }

        /** A file of the wish could not be read: which, where and how to mend it. */
        record Unreadable(String sentence) implements Answer {}
    }

    /** Changes that were planned and found to help; may take seconds. */
    public List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles) {
        return new Remedies(planner).against(request, obstacles);
    }

    public Answer answer(PlanWish wish) {
        try {
            ReadWish read = ReadWish.of(wish);
            return new Answer.Read(read, planner.apply(read.request()));
        } catch (StoreException unreadable) {
            return new Answer.Unreadable(String.valueOf(unreadable.getMessage()));
        }
    }
}
