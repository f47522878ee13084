package piecewright.reading;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.journal.Entry;
import piecewright.journal.Report;
import piecewright.journal.Report.Did;
import piecewright.journal.Report.Started;
import piecewright.journal.Report.Weighed;
import piecewright.plan.ActKind;

/** What the journal says was done, as far as it takes to tell what can be true beside it. Immutable. */
final class Standing {
    private static final Duration MOMENT = Duration.ofMinutes(1);

    private final List<Done> acts;
    private final List<Entry> entries;

    /** A step done or begun. */
    record Done(ActKind kind, Instant at, double waterL, boolean begun) {}

    /** Where the batch is. */
    enum Stage {
        DRY,
        STEEPING,
        DRAINED,
        FLOOR,
        COUCH,
        KILN,
        OFF,
        OVEN
    }

    private Standing(List<Done> acts, List<Entry> entries) {
        this.acts = acts.stream().sorted(Comparator.comparing(Done::at)).toList();
        this.entries = List.copyOf(entries);
    }

    static Standing of(List<Entry> effective) {
        List<Done> acts = new ArrayList<>();
        effective.forEach(entry -> done(entry.report(), entry.at()).ifPresent(acts::add));
        return new Standing(acts, effective);
    }

    private static Optional<Done> done(Report report, Instant at) {
        if (report instanceof Did did)
            return Optional.of(new Done(did.act(), at, did.waterL().orElse(0), false));
        if (report instanceof Started started) return Optional.of(new Done(started.act(), at, 0, true));
        return Optional.empty();
    }

    /** The same with one thing more. */
    Standing with(Report report, Instant at) {
        List<Done> more = new ArrayList<>(acts);
        done(report, at).ifPresent(more::add);
        List<Entry> said = new ArrayList<>(entries);
        if (report instanceof Weighed) {
            said.add(new Entry(Integer.MAX_VALUE, at, at, Optional.empty(), report));
            said.sort(Comparator.comparing(Entry::at));
        }
        return new Standing(more, said);
    }

    List<Entry> entries() {
        return entries;
    }

    List<Done> acts() {
        return acts;
    }

    List<Done> before(Instant at) {
        return acts.stream().filter(act -> !act.at().isAfter(at)).toList();
    }

    List<Done> after(Instant at) {
        return acts.stream().filter(act -> act.at().isAfter(at)).toList();
    }

    Optional<Done> lastOf(Instant until, ActKind... kinds) {
        List<ActKind> any = List.of(kinds);
        Optional<Done> last = Optional.empty();
        for (Done act : acts) {
            if (act.at().isAfter(until)) break;
            if (any.contains(act.kind())) last = Optional.of(act);
        }
        return last;
    }

    boolean did(Instant until, ActKind kind) {
        return lastOf(until, kind).isPresent();
    }

    Stage stage(Instant at) {
        Set<ActKind> did = EnumSet.noneOf(ActKind.class);
        ActKind steep = ActKind.FLOOR;
        boolean roasting = false;
        for (Done act : acts) {
            if (act.at().isAfter(at)) break;
            did.add(act.kind());
            if (act.kind() == ActKind.SOAK || act.kind() == ActKind.DRAIN) steep = act.kind();
            if (act.kind() == ActKind.ROAST) roasting = act.begun();
        }
        if (roasting) return Stage.OVEN;
        if (any(did, ActKind.ROAST, ActKind.OFF, ActKind.DEROOT)) return Stage.OFF;
        if (any(did, ActKind.LOAD, ActKind.CURE, ActKind.STIR, ActKind.RAISE)) return Stage.KILN;
        if (did.contains(ActKind.PACK) && !did.contains(ActKind.BREAK)) return Stage.COUCH;
        if (any(did, ActKind.FLOOR, ActKind.TURN, ActKind.WITHER, ActKind.BREAK)) return Stage.FLOOR;
        return switch (steep) {
            case SOAK -> Stage.STEEPING;
            case DRAIN -> Stage.DRAINED;
            default -> Stage.DRY;
        };
    }

    private static boolean any(Set<ActKind> did, ActKind... kinds) {
        for (ActKind kind : kinds) if (did.contains(kind)) return true;
        return false;
    }

    /** The last weighing not after an instant, if nothing went under water since; with the water sprinkled since, kg. */
    OptionalDouble heldKg(Instant at) {
        Optional<Entry> last = entries.stream()
                .filter(entry ->
                        entry.report() instanceof Weighed && !entry.at().isAfter(at))
                .reduce((first, second) -> second);
        if (last.isEmpty()) return OptionalDouble.empty();
        Instant weighed = last.get().at();
        boolean soaked = acts.stream()
                .anyMatch(act -> act.kind() == ActKind.SOAK
                        && !act.at().isBefore(weighed)
                        && !act.at().isAfter(at));
        if (soaked) return OptionalDouble.empty();
        double sprinkledKg = acts.stream()
                .filter(act -> act.kind() == ActKind.SPRINKLE
                        && act.at().isAfter(weighed)
                        && !act.at().isAfter(at))
                .mapToDouble(Done::waterL)
                .sum();
        return OptionalDouble.of(((Weighed) last.get().report()).netKg() + sprinkledKg);
    }

    /** Whether two instants are within so long of each other. */
    static boolean near(Instant one, Instant other, Duration within) {
        return Duration.between(one, other).abs().compareTo(within) <= 0;
    }

    /** Whether an instant is now, to the minute. */
    static boolean isNow(Instant at, Instant now) {
        return near(at, now, MOMENT);
    }
}
