package piecewright.plan;

import java.util.Objects;
import piecewright.process.GrainMass;
import piecewright.process.Surroundings;
import piecewright.process.germination.Heap;
import piecewright.style.WetCouchSchedule;

/**
 * The wet couch of one piece: what its style allows, where it would lie, how it keeps its warmth.
 *
 * @param where the place it is heaped in, or the box by name
 * @param air of that place
 * @param expected what to expect of it
 */
public record Heaping(WetCouchSchedule schedule, String where, Heap heap, Surroundings air, Expected expected) {
    public Heaping {
        Objects.requireNonNull(schedule);
        Objects.requireNonNull(where);
        Objects.requireNonNull(heap);
        Objects.requireNonNull(air);
        Objects.requireNonNull(expected);
    }

    /**
     * @param airC mean of its air, °C
     * @param riseK how far its mean gets over that once it chits, K
     * @param bedC mean of the air the piece chits in otherwise, °C
     * @param worth whether it is worth heaping, or why not
     */
    public record Expected(double airC, double riseK, double bedC, Worth worth) {
        public boolean helps() {
            return worth == Worth.HELPS;
        }

        /** The warmest its middle gets, °C. */
        public double coreC() {
            return airC + riseK + Heap.CORE_OVER_MEAN_K;
        }
    }

    /** Whether a heap is worth making. */
    public enum Worth {
        HELPS,
        /** The bed is warm enough: corns chit soon by themselves. */
        BED_IS_WARM,
        /** So little grain makes too little warmth. */
        TOO_LITTLE_GRAIN,
        /** Where it could lie is colder than where the bed is. */
        PLACE_IS_COLD,
        /** Its middle would get warmer than is allowed. */
        TOO_WARM
    }

    /** No part of its mean may get warmer, for its core is warmer still, °C. */
    public double warmestMeanC() {
        return schedule.warmestCoreC() - Heap.CORE_OVER_MEAN_K;
    }

    /** How deep a piece lies in it, cm. */
    double depthCm(GrainMass mass, Setup setup) {
        return 100 * mass.totalKg() / (setup.models().growth().bulkKgPerM3() * heap.areaM2());
    }

    /** The same heap in other air. */
    public Heaping in(Surroundings changed) {
        return new Heaping(schedule, where, heap, changed, expected);
    }
}
