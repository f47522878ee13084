package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import piecewright.history.Account;
import piecewright.history.Account.Done;
import piecewright.journal.Journal;
import piecewright.plan.ActKind;
import piecewright.replan.Where.Water;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.Rung;

/**
 * Malt that was taken off the kiln before it was dry: it spoils unless it goes on drying.
 *
 * @param moistureFraction its moisture now, wet basis
 * @param endMoistureFraction what its style may have at most, wet basis
 * @param airOnC the warmest its style takes while it is so wet, °C
 * @param lain how long it has been off the kiln
 * @param entries journal entries that say it is off, in order: without them its drying goes on
 */
public record WetMalt(
        double moistureFraction, double endMoistureFraction, double airOnC, Duration lain, List<Integer> entries) {
    private static final Set<ActKind> TAKES_OFF = Set.of(ActKind.OFF, ActKind.DEROOT);

    public WetMalt {
        Objects.requireNonNull(lain);
        entries = List.copyOf(entries);
    }

    /** The same with those entries only that a journal has. */
    public WetMalt asIn(Journal journal) {
        List<Integer> there = entries.stream()
                .filter(number -> journal.entry(number).isPresent())
                .toList();
        return new WetMalt(moistureFraction, endMoistureFraction, airOnC, lain, there);
    }

    /** Wet or damp. */
    public Wetness wetness() {
        return Wetness.of(moistureFraction);
    }

    /** Whether malt off the kiln is too wet to keep, nine chances in ten; empty where it is not, or was roasted since. */
    static Optional<WetMalt> of(KilnSchedule kiln, Account account, Water water, Instant now) {
        List<Done> off = account.acts().stream()
                .filter(done -> TAKES_OFF.contains(done.visit().kind()))
                .toList();
        boolean roasted = account.acts().stream().anyMatch(done -> done.visit().kind() == ActKind.ROAST);
        if (off.isEmpty() || roasted || !(water instanceof Water.Known known)) return Optional.empty();
        double surelyFraction = known.moistureFraction() - known.reachFraction();
        if (Wetness.of(surelyFraction) == Wetness.DRY) return Optional.empty();
        return Optional.of(new WetMalt(
                known.moistureFraction(),
                kiln.endMoistureFraction(),
                airOnC(kiln, known.moistureFraction()),
                Duration.between(off.get(0).visit().at(), now),
                off.stream().flatMap(done -> done.entry().stream()).toList()));
    }

    private static double airOnC(KilnSchedule kiln, double moistureFraction) {
        return kiln.ladder().stream()
                .filter(rung -> moistureFraction <= rung.belowMoistureFraction())
                .mapToDouble(Rung::airOnC)
                .max()
                .orElse(kiln.ladder().get(0).airOnC());
    }
}
