package piecewright.assess;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What to do with a lot and why.
 *
 * @param reasons heaviest first, at least one
 * @param retestOn day of the next test; there when the verdict is to wait
 */
public record LotJudgement(
        Verdict verdict,
        List<Reason> reasons,
        List<NextTest> nextTests,
        Optional<LocalDate> retestOn,
        LotCounts counts,
        PlanEffects effects) {
    public LotJudgement {
        Objects.requireNonNull(verdict);
        reasons = List.copyOf(reasons);
        nextTests = List.copyOf(nextTests);
        Objects.requireNonNull(retestOn);
        Objects.requireNonNull(counts);
        Objects.requireNonNull(effects);
    }

    /** A test worth making, and of how many corns. */
    public record NextTest(TestKind kind, int corns) {}

    /** Kinds of test. */
    public enum TestKind {
        ENERGY,
        WATER_SENSITIVITY,
        VIABILITY
    }

    /**
     * What a plan should make of the lot.
     *
     * @param deadFraction corns that lie ungerminated or broken, share of all; with them rots the warm heap
     * @param leastGrowingFraction lower bound of the corns that grow, 95 %
     * @param longerRestHours each air rest longer by so much, 0 for none
     */
    public record PlanEffects(
            double deadFraction, double leastGrowingFraction, double longerRestHours, MouldRisk mould) {
        /** By how much the floor and the warm heap are to be kept cooler than the style allows, K. */
        public double coolerK() {
            return mould.coolerK;
        }
    }

    /** Mould in a warm heap. */
    public enum MouldRisk {
        LOW(0),
        /** Judgement: two degrees cost a tenth of the growth and a fifth of what mould gains. */
        RAISED(2),
        /** Judgement: twice as much. */
        HIGH(4);

        private final double coolerK;

        MouldRisk(double coolerK) {
            this.coolerK = coolerK;
        }
    }
}
