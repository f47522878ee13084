package piecewright.assess;

import java.time.LocalDate;
import java.util.OptionalInt;
import piecewright.grain.LotObservations.Sign;

/** One thing that speaks for or against a lot: figures only; the sentences are made in {@code text}. */
public sealed interface Reason {
    /** What this reason alone would have done with the lot. */
    Verdict verdict();

    /** The seed was treated. */
    record Treated() implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.DO_NOT_MALT;
        }
    }

    /** Dyed, or seed-grade of unknown treatment. */
    record SuspectSeed(Sign sign) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.DO_NOT_MALT;
        }
    }

    /** Musty, mouldy or pink. */
    record Spoilt(Sign sign) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.DO_NOT_MALT;
        }
    }

    /** Ergot found; the limit in force since a day. */
    record Ergot(double foundGPerKg, double limitGPerKg, LocalDate since) implements Reason {
        @Override
        public Verdict verdict() {
            return foundGPerKg > limitGPerKg ? Verdict.DO_NOT_MALT : Verdict.MALT_IT;
        }
    }

    /** Alive but asleep. */
    record Dormant(Counted alive, Counted awake) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.WAIT_AND_RETEST;
        }
    }

    /** Nothing was counted in about 4 mL. */
    record Untested() implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.WAIT_AND_RETEST;
        }
    }

    /** Young grain that does not all grow, not tested for life: asleep or dead, nobody can tell. */
    record PerhapsAsleep(LocalDate harvested) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.WAIT_AND_RETEST;
        }
    }

    /** Dishes differ more than chance explains. */
    record DishesDisagree(int rangeCorns, int toleratedCorns) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.WAIT_AND_RETEST;
        }
    }

    /**
     * How many grow.
     *
     * @param neededFraction the limit that decided, above or below
     * @param settledBy corns that would make it certain; empty when it is, or when no sensible count would
     */
    record Growing(Counted counted, Verdict verdict, double neededFraction, boolean certain, OptionalInt settledBy)
            implements Reason {}

    /** Corns drown in more water. */
    record WaterSensitive(LotCounts.Lost lost) implements Reason {
        @Override
        public Verdict verdict() {
            return lost.sensitivity() == SensitivityClass.VERY ? Verdict.WAIT_AND_RETEST : Verdict.MALT_IT;
        }
    }

    /** They come late. */
    record Slow(double indexRatio) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.MALT_IT;
        }
    }

    /** Many broken or peeled corns. */
    record Broken(double brokenFraction) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.MALT_IT;
        }
    }

    /** Too damp to keep. */
    record Damp(double wetBasisFraction) implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.MALT_IT;
        }
    }

    /** Nobody said whether the seed was treated. */
    record TreatmentUnknown() implements Reason {
        @Override
        public Verdict verdict() {
            return Verdict.MALT_IT;
        }
    }
}
