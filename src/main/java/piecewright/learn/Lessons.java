package piecewright.learn;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.history.Account;
import piecewright.history.Contradiction;
import piecewright.history.EventLog;
import piecewright.history.Followed;
import piecewright.journal.Entry;
import piecewright.journal.Journal;
import piecewright.learn.Learned.Chapter;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.plan.Timetable.Visit;

/** What one batch teaches about its lot and its kit, told from its journal. Pure. */
public final class Lessons {
    /** Air is laid out this long before the first entry and after the last. */
    private static final Duration MARGIN = Duration.ofDays(1);

    /** What is read at the moment of an act counts as read just after it. */
    private static final Duration READ_AFTER = Duration.ofSeconds(1);

    private final ModelParameters parameters;

    public Lessons(ModelParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    /**
     * A batch.
     *
     * @param request what its plan was made from, lot and house as their files state them
     * @param rawGrainKg grain put to steep
     * @param planned when the acts stand in its plan; empty where no plan is kept
     */
    public record Batch(UUID id, PlanRequest request, double rawGrainKg, List<Visit> planned, Journal journal) {
        public Batch {
            planned = List.copyOf(planned);
            Objects.requireNonNull(id);
            Objects.requireNonNull(request);
            Objects.requireNonNull(journal);
        }

        /** The same where no plan is kept. */
        public Batch(UUID id, PlanRequest request, double rawGrainKg, Journal journal) {
            this(id, request, rawGrainKg, List.of(), journal);
        }
    }

    /** What had been learned of a lot and of a house. */
    public record Known(Learned lot, Learned house) {
        public Known {
            Objects.requireNonNull(lot);
            Objects.requireNonNull(house);
        }
    }

    /** What became of it. */
    public sealed interface Outcome {
        /**
         * What is known now, and how each observation was taken.
         *
         * @param leftOut entries that cannot be true: nothing was learned from them
         */
        record Taught(Estimate estimate, List<Contradiction> leftOut, Known known) implements Outcome {
            public Taught {
                Objects.requireNonNull(estimate);
                leftOut = List.copyOf(leftOut);
                Objects.requireNonNull(known);
            }
        }

        /**
         * The journal holds nothing to learn from yet.
         *
         * @param leftOut entries that cannot be true
         */
        record NothingYet(List<Contradiction> leftOut) implements Outcome {
            public NothingYet {
                leftOut = List.copyOf(leftOut);
            }
        }

        /** Later batches have started from what this one taught: it cannot be learned from again. */
        record BuiltUpon() implements Outcome {}
    }

    /** Learns from a batch; from the same batch again it replaces what that taught before. */
    public Outcome of(Batch batch, Known before, Instant now) {
        Optional<Belief> lot =
                before.lot().startFor(batch.id(), Priors.lot(batch.request().lot()));
        Belief stated = Priors.house(batch.request().house());
        Optional<Belief> house = before.house().startFor(batch.id(), stated);
        if (lot.isEmpty() || house.isEmpty()) return new Outcome.BuiltUpon();
        Optional<Account> account = account(batch);
        List<Contradiction> leftOut = account.map(Account::contradictions).orElse(List.of());
        Optional<Told> run = account.flatMap(told -> told(batch, told));
        if (run.isEmpty() || run.get().rerun().observations().isEmpty()) return new Outcome.NothingYet(leftOut);
        Set<Unknown> moved = moves(run.get().rerun());
        Belief prior = lot.get().and(house.get().only(moved::contains));
        Estimate estimate = Estimator.estimate(prior, run.get().rerun());
        Belief posterior = estimate.posterior();
        Predicate<Unknown> told = unknown -> posterior.tellsMoreThan(prior, unknown);
        Belief ofLot = earlier(before.lot(), batch.id())
                .overriddenBy(posterior.only(
                        owned(Trait.Owner.LOT).and(told).and(unknown -> unknown.trait() != Trait.RAW_MOISTURE)));
        Belief ofKit = earlier(before.house(), batch.id())
                .overriddenBy(posterior.only(owned(Trait.Owner.KIT).and(told)));
        return new Outcome.Taught(
                estimate,
                leftOut,
                new Known(
                        before.lot().with(new Chapter(batch.id(), now, ofLot)),
                        before.house().with(new Chapter(batch.id(), now, ofKit))));
    }

    /** The batch run again as it was; empty when nothing was soaked or no kit holds it. */
    public Optional<Rerun> rerun(Batch batch) {
        return account(batch).flatMap(account -> told(batch, account)).map(Told::rerun);
    }

    private record Told(Setup setup, Rerun rerun) {}

    private static Optional<Account> account(Batch batch) {
        List<Entry> entries = batch.journal().effective();
        if (entries.isEmpty()) return Optional.empty();
        PlanRequest wish = batch.request();
        double dryKg = batch.rawGrainKg()
                * (1 - wish.lot().size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION))
                * (1 - wish.lot().moisture().moisture().wetBasisFraction());
        Instant last = entries.get(entries.size() - 1).at();
        return Optional.of(EventLog.account(
                new Followed(wish.style(), dryKg, batch.planned()),
                batch.journal(),
                batch.journal().vessels(),
                last));
    }

    private Optional<Told> told(Batch batch, Account account) {
        if (account.acts().isEmpty()) return Optional.empty();
        Instant origin = account.acts().get(0).visit().at().minus(MARGIN);
        Instant until = account.until().orElseThrow().plus(READ_AFTER);
        PlanRequest request = batch.request();
        Rooms rooms = new Rooms(request.house(), origin, until.plus(MARGIN));
        return new SetupMaker(parameters)
                .of(request, rooms, batch.rawGrainKg(), new ArrayList<>())
                .flatMap(setup -> RerunBuilder.of(
                                setup,
                                request.lot().name(),
                                request.house().kit().scale(),
                                account,
                                new RerunBuilder.Horizon(origin, until))
                        .map(rerun -> new Told(setup, rerun)));
    }

    private static Set<Unknown> moves(Rerun rerun) {
        return Stream.concat(
                        rerun.raw().moves().stream(),
                        rerun.stretches().stream().flatMap(stretch -> stretch.moves().stream()))
                .collect(Collectors.toUnmodifiableSet());
    }

    private static Predicate<Unknown> owned(Trait.Owner owner) {
        return unknown -> unknown.trait().owner() == owner;
    }

    /** What earlier batches told, whether this one tells of it or not. */
    private static Belief earlier(Learned learned, UUID batch) {
        return learned.chapters().stream()
                .filter(chapter -> !chapter.batch().equals(batch))
                .reduce((first, second) -> second)
                .map(Chapter::belief)
                .orElse(Belief.nothing());
    }
}
