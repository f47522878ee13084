package piecewright.history;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.history.Contradiction.NoSuchWeight;
import piecewright.history.Contradiction.Vessel;
import piecewright.journal.Entry;
import piecewright.journal.Report.Tare;
import piecewright.journal.Report.Weighed;

/** Whether weights can be true, one after the other as they were found. Scratch space of one reading of a log. */
final class Weights {
    /** Judgement: nor before its kiln, leached and respired. */
    private static final double LEAST_GREEN_FRACTION = 0.90;
    /** Judgement: without its vessel the grain may have dried by this share since it was last weighed. */
    private static final double DRIED_FRACTION = 0.12;

    private final double dryKg;
    private final List<Tare> vessels;
    private OptionalDouble lastKg = OptionalDouble.empty();
    private double addedKg;
    private boolean soaked;

    Weights(double dryKg, List<Tare> vessels) {
        this.dryKg = dryKg;
        this.vessels = List.copyOf(vessels);
    }

    /** The grain went under water: it may be heavier next time. */
    void soaked() {
        soaked = true;
    }

    void sprinkled(double waterKg) {
        addedKg += waterKg;
    }

    /** What speaks against a weighing; a weighing nothing speaks against is believed from here on. */
    Optional<Contradiction> against(Entry entry, Weighed weighed, Keeping keeping) {
        double netKg = weighed.netKg();
        double most = dryKg * (1 + NoSuchWeight.WETTEST_RATIO);
        boolean kilned = keeping == Keeping.HEATED || keeping == Keeping.DONE;
        double least = dryKg * (kilned ? NoSuchWeight.LEAST_DRY_FRACTION : LEAST_GREEN_FRACTION);
        if (lastKg.isPresent()) {
            double before = lastKg.getAsDouble() + addedKg;
            if (!soaked && netKg > before * (1 + Weighed.FORBIDDEN_JUMP_FRACTION)) {
                return Optional.of(new Contradiction.GotHeavier(
                        entry.number(), entry.at(), netKg, lastKg.getAsDouble(), explained(netKg, before)));
            }
            if (soaked && netKg < before * (1 - Weighed.FORBIDDEN_JUMP_FRACTION)) {
                return Optional.of(
                        new Contradiction.GotLighter(entry.number(), entry.at(), netKg, lastKg.getAsDouble()));
            }
        }
        if (netKg > most || netKg < least) {
            return Optional.of(new NoSuchWeight(entry.number(), entry.at(), netKg, least, most));
        }
        lastKg = OptionalDouble.of(netKg);
        addedKg = 0;
        soaked = false;
        return Optional.empty();
    }

    private Optional<Vessel> explained(double netKg, double beforeKg) {
        return vessels.stream()
                .map(tare -> new Vessel(tare.vessel(), tare.tareKg(), netKg - tare.tareKg()))
                .filter(vessel -> vessel.withoutKg() <= beforeKg * (1 + Weighed.FORBIDDEN_JUMP_FRACTION / 4)
                        && vessel.withoutKg() >= beforeKg * (1 - DRIED_FRACTION))
                .min(Comparator.comparingDouble(vessel -> Math.abs(beforeKg - vessel.withoutKg())));
    }
}
