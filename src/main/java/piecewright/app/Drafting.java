package piecewright.app;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.plan.Booking;
import piecewright.plan.Obstacle;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanResult;
import piecewright.plan.Plans;
import piecewright.plan.Watch;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.store.StoreException;
import piecewright.store.StyleLibrary;

/** Answers wishes as they are being said. */
public final class Drafting {
    private final Plans planner;
    private final StyleLibrary library;
    private final OtherBatches others;

    /** @param library all styles there are */
    public Drafting(Plans planner, StyleLibrary library) {
        this.planner = planner;
        this.library = library;
        this.others = new OtherBatches(library);
    }

    /**
     * What is wished for as it is being said.
     *
     * @param colourEbc empty for the middle of the style's cure
     * @param besides files of batches; those in progress in the same house keep their hands and kit
     */
    public record Asked(PlanWish wish, OptionalDouble colourEbc, List<Path> besides) {
        public Asked {
            Objects.requireNonNull(wish);
            Objects.requireNonNull(colourEbc);
            besides = List.copyOf(besides);
        }
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

    /** Changes that were planned and found to help; may take seconds. Those that leave the other batches alone come first. */
    public List<Remedy> remedies(PlanRequest request, List<Obstacle> obstacles, Watch watch) {
        Remedies remedies = new Remedies(planner.watchedBy(watch));
        List<Remedy> apart = remedies.against(request.beside(List.of()), obstacles).stream()
                .filter(remedy -> others.leavesAlone(remedy.request(), remedy.plan(), request.besides()))
                .toList();
        return apart.isEmpty() && !request.besides().isEmpty() ? remedies.against(request, obstacles) : apart;
    }

    /**
     * The plan of a wish with the tests of lot and kit that nobody made yet; as if it were alone where it meets no other
     * batch so.
     *
     * @param checksFrom no test before then, by the house's clock
     * @param watch may end it with a CancellationException, once the wish was said otherwise
     */
    public Answer answer(Asked asked, LocalDateTime checksFrom, Watch watch) {
        try {
            MakePlan make = new MakePlan(planner.watchedBy(watch), library.all());
            MakePlan.Extras extras = new MakePlan.Extras(asked.colourEbc(), Set.of(), Optional.of(checksFrom));
            ReadWish alone = ReadWish.of(asked.wish());
            List<Booking> taken = others.takenHere(alone.request().house(), asked.besides());
            MakePlan.Made made = make.of(alone, extras);
            boolean apart = made.result()
                    .match(
                            planned -> others.leavesAlone(made.wish().request(), planned.plan(), taken),
                            notPossible -> true);
            if (apart) return new Answer.Read(beside(made.wish(), taken), made.result());
            MakePlan.Made among = make.of(beside(alone, taken), extras);
            return new Answer.Read(among.wish(), among.result());
        } catch (StoreException unreadable) {
            return new Answer.Unreadable(String.valueOf(unreadable.getMessage()));
        }
    }

    private static ReadWish beside(ReadWish wish, List<Booking> taken) {
        return wish.withRequest(wish.request().beside(taken));
    }
}
