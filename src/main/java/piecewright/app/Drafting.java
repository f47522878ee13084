package piecewright.app;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.store.StoreException;
import piecewright.style.MaltStyle;

/** Answers wishes as they are being said. */
public final class Drafting {
    private final Function<PlanRequest, PlanResult> planner;
    private final MakePlan make;

    /** @param styles all there are */
    public Drafting(Function<PlanRequest, PlanResult> planner, List<MaltStyle> styles) {
        this.planner = planner;
        this.make = new MakePlan(planner, styles);
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

    /**
     * The plan of a wish with the tests of lot and kit that nobody made yet.
     *
     * @param checksFrom no test before then, by the house's clock
     */
    public Answer answer(PlanWish wish, LocalDateTime checksFrom) {
        try {
            MakePlan.Extras extras = new MakePlan.Extras(OptionalDouble.empty(), Set.of(), Optional.of(checksFrom));
            MakePlan.Made made = make.of(ReadWish.of(wish), extras);
            return new Answer.Read(made.wish(), made.result());
        } catch (StoreException unreadable) {
            return new Answer.Unreadable(String.valueOf(unreadable.getMessage()));
        }
    }
}
