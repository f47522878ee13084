package piecewright.history;

import java.time.Instant;
import java.util.Optional;
import piecewright.journal.Spot;
import piecewright.plan.ActKind;

/**
 * An entry that cannot be true as it stands: asked about, and left out of everything until it is corrected or struck.
 */
public sealed interface Contradiction {
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
            implements Contradiction {}

    /** Steeped grain got lighter: part of it is missing, or a vessel's weight was taken off twice. */
    record GotLighter(int entry, Instant at, double netKg, double beforeKg) implements Contradiction {}

    /** Heavier than this grain can be full of water, or lighter than it is dry; likely another unit or a vessel. */
    record NoSuchWeight(int entry, Instant at, double netKg, double leastKg, double mostKg) implements Contradiction {
        /** Judgement: no grain holds more water, kg per kg of dry matter: saturation and a film. */
        public static final double WETTEST_RATIO = 1.25;
        /** Judgement: no batch has lost more of its dry matter, rootlets and handling included. */
        public static final double LEAST_DRY_FRACTION = 0.78;
    }

    /** More water than the grain can take up, litres. */
    record TooMuchWater(int entry, Instant at, double waterL, double mostL) implements Contradiction {}

    /** Wetter than grain can be, or drier than anybody can dry it; wet basis. */
    record NoSuchMoisture(int entry, Instant at, double moistureFraction, double leastFraction, double mostFraction)
            implements Contradiction {}

    /** Nothing there is so cold or so hot, °C; likely another unit or another place. */
    record NoSuchTemperature(int entry, Instant at, Spot spot, double readC, double leastC, double mostC)
            implements Contradiction {}

    /** No grain left alone changes its temperature so fast, °C. */
    record Jumped(int entry, Instant at, double readC, double beforeC) implements Contradiction {}

    /** Shoots got shorter: mean acrospire, shares of the kernel. */
    record Shrunk(int entry, Instant at, double acrospireFraction, double beforeFraction) implements Contradiction {}

    /** The act cannot have come there: a later one was done before. */
    record OutOfOrder(int entry, Instant at, ActKind act, String afterActId) implements Contradiction {}

    /** The style has no such act. */
    record NotOfTheStyle(int entry, Instant at, ActKind act) implements Contradiction {}

    /** It cannot have been then. */
    record NoSuchTime(int entry, Instant at, Time time) implements Contradiction {}

    /** Why not. */
    enum Time {
        /** Long before the batch can have begun. */
        BEFORE_THE_BATCH,
        /** It was written down before it happened. */
        AHEAD_OF_ITS_WRITING,
        /** So long after the plan's last act that the grain cannot have waited. */
        AFTER_THE_BATCH
    }

    /** A vessel by name with its weight, kg, and what the grain would weigh without it, kg. */
    record Vessel(String name, double tareKg, double withoutKg) {}
}
