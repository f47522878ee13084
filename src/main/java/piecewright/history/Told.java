package piecewright.history;

import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.journal.Entry;
import piecewright.journal.Report.HeatSet;
import piecewright.plan.ActKind;

/**
 * An act as an entry tells of it; sprinkling is a turning.
 *
 * @param waterL water sprinkled, litres; empty when nobody said
 * @param load the load of a roast it tells of, 0 where there is only one
 */
record Told(Entry entry, ActKind kind, OptionalDouble waterL, Optional<HeatSet> heat, int load) {
    Told(Entry entry, ActKind kind) {
        this(entry, kind, OptionalDouble.empty(), Optional.empty(), 0);
    }

    Told withWaterL(double changedL) {
        return new Told(entry, kind, OptionalDouble.of(changedL), heat, load);
    }

    Told withHeat(HeatSet changed) {
        return new Told(entry, kind, waterL, Optional.of(changed), load);
    }

    Told withLoad(int changed) {
        return new Told(entry, kind, waterL, heat, changed);
    }
}
