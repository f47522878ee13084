package piecewright.replan;

import java.time.Instant;
import java.util.Optional;
import piecewright.plan.ActKind;

/** An entry that cannot be true as it stands: asked about, and left out of every forecast until it is corrected. */
public sealed interface Question {
    /** The number of the entry in doubt. */
    int entry();

    /** When it is said to have been. */
    Instant at();

    /**
     * Grain out of the water got heavier.
     *
     * @param netKg what it says, kg
     * @param beforeKg the last weight that was believed, kg
     * @param vessel a vessel whose weight would explain it
     */
    record GotHeavier(int entry, Instant at, double netKg, double beforeKg, Optional<Vessel> vessel)
            implements Question {}

    /** Steeped grain got lighter: part of it is missing, or a vessel's weight was taken off twice. */
    record GotLighter(int entry, Instant at, double netKg, double beforeKg) implements Question {}

    /** Heavier than this grain can be full of water, or lighter than it is dry; likely another unit or a vessel. */
    record NoSuchWeight(int entry, Instant at, double netKg, double leastKg, double mostKg) implements Question {}

    /** The act cannot have come there: a later one was done before. */
    record OutOfOrder(int entry, Instant at, ActKind act, String afterActId) implements Question {}

    /** A vessel by name with its weight, kg, and what the grain would weigh without it, kg. */
    record Vessel(String name, double tareKg, double withoutKg) {}
}
