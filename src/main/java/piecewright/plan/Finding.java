package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.assess.Reason;
import piecewright.assess.Verdict;
import piecewright.process.couch.Ignition.Outlook;
import piecewright.quantity.Moisture;

/** Something a person should know beside a good plan: figures only; the sentences are made in {@code text}. */
public sealed interface Finding {
    /** How much it matters. */
    enum Severity {
        NOTE,
        WARNING
    }

    Severity severity();

    /** What it is about: an act id, "lot", "house", "style" or "plan". */
    String about();

    /** The air figures of this place end; the last day's pattern repeats after that. */
    record AirRepeats(String about, String place, Instant after) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /**
     * Something the wish left open was chosen.
     *
     * @param lost the best of the other ways; empty when no other fits
     */
    record Chosen(String about, Arranging.Choice choice, Way taken, Optional<Lost> lost) implements Finding {
        /** A way as the plan's own act sets it, and what the plan costs so, cost-minutes. */
        public record Way(Setting setting, double costMinutes) {}

        /** Another way, and where it is charged more, largest first. */
        public record Lost(Way way, List<Bill.Difference> because) {
            public Lost {
                Objects.requireNonNull(way);
                because = List.copyOf(because);
            }
        }

        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Water is not poured as it comes: it is chilled or warmed to that temperature. */
    record WaterTempered(String about, double sourceC, double fillC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Germination is below what the craft asks, or unknown (tested false). */
    record Germination(String about, boolean tested, double energyFraction) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** This heater could make a change of heat by itself at that time; what only somebody can do is weigh before it. */
    record RampsItself(String about, String heater, double setC, Instant at) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Many corns drown in more water: rests were lengthened. */
    record WaterSensitive(String about, double lostFraction) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The lot's moisture is a guess: weights carry that doubt. */
    record MoistureGuessed(String about, Moisture moisture, double sdFraction) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /**
     * Earlier batches taught how this lot drinks and grows, and the plan goes by it; against the usual lot of its kind.
     *
     * @param steepRateRatio uptake as a multiple of the usual; likewise growth
     */
    record LotLearned(String about, double steepRateRatio, double growthRateRatio) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Earlier batches taught how much air this heater moves and how far its dial is off; the plan's figures are the air's. */
    record HeaterLearned(String about, String heater, double airFlowM3PerHour, double dialOffsetK) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Nobody said whether the seed was treated. */
    record TreatmentUnknown(String about) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The grain is expected warmer on the floor than the style likes. */
    record WarmFloor(String about, double expectedC, double limitC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** This act had to be put past its free window, by so much, still inside its hard limit. */
    record PastFreeWindow(String about, Duration by) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The figure of the finished malt lies outside what the style asks. */
    record OffStyle(String about, Quantity quantity, double expected, double low, double high) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The malt is ready so much later than it was wanted: nothing sooner would make this malt any more. */
    record ReadyLate(String about, Duration by) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Nobody has the time that this roast takes in one go: the malt is kept as it comes off the kiln. */
    record NotRoasted(String about) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Heat above 60 °C needs somebody near for all of this stretch. */
    record AttendedHeat(String about, Instant from, Instant until, double hottestC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** What the judge of lots holds against this one. */
    record LotDoubt(String about, Reason reason) implements Finding {
        @Override
        public Severity severity() {
            return reason.verdict() == Verdict.MALT_IT ? Severity.NOTE : Severity.WARNING;
        }
    }

    /** The couch passes slowly through what mould likes, with so many corns dead or broken in it. */
    record CouchMayMould(String about, MouldRisk risk, double deadFraction) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Dead, broken or damp corns make mould likelier than usual where the piece lies warm. */
    record MouldLikely(String about, MouldRisk risk, double deadFraction) implements Finding {
        @Override
        public Severity severity() {
            return risk == MouldRisk.HIGH ? Severity.WARNING : Severity.NOTE;
        }
    }

    /** The plan begins too soon for this test of the lot or piece of kit. */
    record NoRoomToCheck(String about, CheckKind kind, String of) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** The bed depth chosen, cm, and the longest unattended gap it allows in the warmest hours. */
    record BedDepth(String about, double depthCm, Duration longestGap) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** An oven this much off its dial makes such colours by the clock, EBC: the sample decides. */
    record OvenDoubt(String about, double errorK, double coolerEbc, double hotterEbc) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** This immersion lasts longer than the longest that is usual in water so warm. */
    record LongSoak(String about, Duration lasts, double longestUsualHours, double waterC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** The piece leaves the steep over-wet. */
    record OverWet(String about, Moisture moisture) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /**
     * The style allows a wet couch and the plan has none.
     *
     * @param why why a heap was not worth making; one that helps was simply not needed
     * @param expected what it would have been like
     * @param limitC its middle was not to get warmer, °C
     */
    record NoWetCouch(String about, Heaping.Worth why, Heaping.Expected expected, double limitC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** This heater burns fuel whose fumes pass through the grain. */
    record OpenFlame(String about, String heater) implements Finding {
        /** Source: FDA, Compliance Policy Guide 578.500: action level of N-nitrosodimethylamine in barley malt, 10 ppb. */
        public static final double NDMA_LEVEL_UG_PER_KG = 10;

        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** How many of the corns still live when the hot couch is broken. */
    record CornsAlive(String about, double aliveFraction) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /**
     * What the wet couch is expected to do.
     *
     * @param coreC the warmest its middle gets, °C
     * @param riseK how much warmer than its air it is by then, K
     * @param limitC its middle never gets warmer, °C
     */
    record WetCouchForecast(String about, double coreC, double riseK, double limitC) implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** What the couch is expected to do: when the pile passes 45 °C (end of time if never), its peak, its index when broken. */
    record CouchForecast(String about, Instant catches, Instant peaks, double peakC, double indexHours)
            implements Finding {
        @Override
        public Severity severity() {
            return Severity.NOTE;
        }
    }

    /** Whether the pile will heat itself: it is so many times the least that does with its air so warm. */
    record CouchHeats(String about, Outlook outlook, double sizeRatio, double airC) implements Finding {
        @Override
        public Severity severity() {
            return outlook == Outlook.WILL_HEAT ? Severity.NOTE : Severity.WARNING;
        }
    }

    /** The couch stays so long where souring germs multiply, and is wet enough for them. */
    record CouchMaySour(String about, Duration warm) implements Finding {
        @Override
        public Severity severity() {
            return Severity.WARNING;
        }
    }

    /** Which quantity an {@link OffStyle} speaks of; colour in EBC, the others shares of one. */
    enum Quantity {
        COLOUR_EBC,
        STEEP_OUT_MOISTURE,
        ACROSPIRE,
        PACKING_MOISTURE,
        COUCH_INDEX_HOURS,
        CURE_HOURS,
        END_MOISTURE
    }
}
