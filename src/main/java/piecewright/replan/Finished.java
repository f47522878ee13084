package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.history.Account;
import piecewright.journal.AcrospireCount;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;

/**
 * What went into a finished batch and what came out of it, as its journal has it.
 *
 * @param stretches how long each stretch lasted, in order
 * @param outcome what came out
 * @param notes what somebody wrote down in words
 * @param notDone acts of its plan that nobody wrote down
 */
public record Finished(List<Stretch> stretches, Outcome outcome, List<String> notes, List<String> notDone) {
    private static final Set<ActKind> ENDS_GROWTH =
            EnumSet.of(ActKind.WITHER, ActKind.PACK, ActKind.STEW, ActKind.LOAD);
    private static final Set<ActKind> IS_MALT = EnumSet.of(ActKind.OFF, ActKind.DEROOT, ActKind.ROAST);

    public Finished {
        stretches = List.copyOf(stretches);
        notes = List.copyOf(notes);
        notDone = List.copyOf(notDone);
        Objects.requireNonNull(outcome);
    }

    /** What a batch goes through. */
    public enum Part {
        SOAK,
        GROWTH,
        WITHER,
        COUCH,
        DRYING,
        CURE
    }

    /** One of them; soaks each by itself. */
    public record Stretch(Part part, Duration lasted) {}

    /**
     * What came out.
     *
     * @param at when the malt was last weighed
     * @param grainKg grain as bought that was steeped, kg
     * @param maltKg malt on the scale, kg
     * @param steepOutKg weight as the piece was cast, kg
     * @param steepOutDryKg dry matter then as steeped, kg
     */
    public record Outcome(
            Instant at,
            double grainKg,
            double maltKg,
            OptionalDouble colourEbc,
            Optional<AcrospireCount> acrospires,
            OptionalDouble steepOutKg,
            double steepOutDryKg) {
        public Outcome {
            Objects.requireNonNull(at);
            Objects.requireNonNull(colourEbc);
            Objects.requireNonNull(acrospires);
            Objects.requireNonNull(steepOutKg);
        }

        /** Malt of so much grain, share. */
        public double yieldFraction() {
            return maltKg / grainKg;
        }
    }

    /** Whether grain has become malt: it is written down as off the kiln. */
    public static boolean isMalt(Account account) {
        return account.visits().stream().anyMatch(visit -> IS_MALT.contains(visit.kind()));
    }

    /** What the journal has of a batch; empty before its malt was weighed. */
    public static Optional<Finished> of(Batch batch, Account account) {
        List<Entry> entries = counted(batch, account);
        return weighed(batch, account)
                .map(entry -> new Finished(
                        stretches(account),
                        outcome(batch, account, entries, entry),
                        notes(entries),
                        notDone(batch, account)));
    }

    /** The entry with the malt's weight, the last of several; empty before it was weighed. */
    public static Optional<Entry> weighed(Batch batch, Account account) {
        Optional<Instant> maltSince = at(account, IS_MALT);
        return maltSince.flatMap(since -> last(counted(batch, account), Report.Weighed.class)
                .filter(entry -> !entry.at().isBefore(since)));
    }

    private static List<Entry> counted(Batch batch, Account account) {
        return batch.journal().effective().stream().filter(account::counts).toList();
    }

    private static Outcome outcome(Batch batch, Account account, List<Entry> entries, Entry weighed) {
        Optional<Instant> cast = at(account, EnumSet.of(ActKind.FLOOR));
        OptionalDouble castKg = cast.isEmpty()
                ? OptionalDouble.empty()
                : entries.stream()
                        .filter(entry -> entry.report() instanceof Report.Weighed
                                && !entry.at().isAfter(cast.get()))
                        .mapToDouble(entry -> ((Report.Weighed) entry.report()).netKg())
                        .reduce((first, second) -> second);
        return new Outcome(
                weighed.at(),
                batch.grainKg(),
                ((Report.Weighed) weighed.report()).netKg(),
                last(entries, Report.ColourMeasured.class)
                        .map(entry -> OptionalDouble.of(((Report.ColourMeasured) entry.report()).colourEbc()))
                        .orElse(OptionalDouble.empty()),
                last(entries, Report.AcrospiresCounted.class)
                        .map(entry -> ((Report.AcrospiresCounted) entry.report()).count()),
                castKg,
                batch.dryKg());
    }

    private static Optional<Entry> last(List<Entry> entries, Class<? extends Report> kind) {
        return entries.stream().filter(entry -> kind.isInstance(entry.report())).reduce((first, second) -> second);
    }

    private static List<String> notes(List<Entry> entries) {
        return entries.stream()
                .map(Entry::report)
                .filter(Report.Noted.class::isInstance)
                .map(report -> ((Report.Noted) report).words())
                .toList();
    }

    private static List<String> notDone(Batch batch, Account account) {
        return batch.planned().stream()
                .map(Visit::id)
                .filter(id -> !account.did(id))
                .toList();
    }

    private static List<Stretch> stretches(Account account) {
        List<Stretch> stretches = new ArrayList<>();
        Optional<Visit> soaks = Optional.empty();
        for (Visit visit : account.visits()) {
            if (visit.kind() == ActKind.SOAK) soaks = Optional.of(visit);
            if (visit.kind() == ActKind.DRAIN && soaks.isPresent()) {
                stretches.add(
                        new Stretch(Part.SOAK, Duration.between(soaks.get().at(), visit.at())));
                soaks = Optional.empty();
            }
        }
        add(stretches, Part.GROWTH, account, EnumSet.of(ActKind.FLOOR), ENDS_GROWTH);
        add(stretches, Part.WITHER, account, EnumSet.of(ActKind.WITHER), EnumSet.of(ActKind.PACK, ActKind.LOAD));
        add(stretches, Part.COUCH, account, EnumSet.of(ActKind.PACK), EnumSet.of(ActKind.BREAK));
        add(stretches, Part.DRYING, account, EnumSet.of(ActKind.LOAD), EnumSet.of(ActKind.CURE, ActKind.OFF));
        add(stretches, Part.CURE, account, EnumSet.of(ActKind.CURE), EnumSet.of(ActKind.OFF));
        return stretches;
    }

    private static void add(
            List<Stretch> stretches, Part part, Account account, Set<ActKind> from, Set<ActKind> until) {
        Optional<Instant> begins = at(account, from);
        Optional<Instant> ends = at(account, until);
        if (begins.isPresent() && ends.isPresent() && ends.get().isAfter(begins.get())) {
            stretches.add(new Stretch(part, Duration.between(begins.get(), ends.get())));
        }
    }

    /** When the first act of these was done. */
    private static Optional<Instant> at(Account account, Set<ActKind> kinds) {
        return account.visits().stream()
                .filter(visit -> kinds.contains(visit.kind()))
                .map(Visit::at)
                .findFirst();
    }
}
