package piecewright.belief;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.Predicate;
import org.hipparchus.exception.MathIllegalArgumentException;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.jspecify.annotations.Nullable;

/**
 * What is believed of some unknowns: jointly normal, each on the axis of its trait. Immutable. Two unknowns that one
 * observation cannot tell apart are correlated here, and stay so when the belief is kept for the next batch.
 */
public final class Belief {
    /** Judgement: a correlation nearer to certain than this is rounding, not knowledge. */
    private static final double LEAST_PIVOT_RATIO = 1e-9;

    /** Judgement: what moves or narrows by less than a thousandth of its spread was not observed. */
    private static final double TOLD_RATIO = 1e-3;

    private final List<Unknown> unknowns;
    private final double[] positions;
    private final double[][] covariance;

    /** One unknown by itself: its value and the standard deviation on its trait's axis, above 0. */
    public record Single(Unknown unknown, double valueRatio, double axisSd) {
        public Single {
            Objects.requireNonNull(unknown);
            if (!(axisSd > 0)) throw new IllegalArgumentException("axisSd must be above 0: " + axisSd);
        }
    }

    /**
     * @param positions most probable positions on the traits' axes, in the order of the unknowns
     * @param covariance symmetric, of the same order
     */
    public Belief(List<Unknown> unknowns, double[] positions, double[][] covariance) {
        this.unknowns = List.copyOf(unknowns);
        this.positions = positions.clone();
        this.covariance = Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new);
        int size = this.unknowns.size();
        if (positions.length != size
                || covariance.length != size
                || this.unknowns.stream().distinct().count() < size) {
            throw new IllegalArgumentException("need one position and one row for each unknown, each unknown once");
        }
        for (int i = 0; i < size; i++) {
            if (covariance[i].length != size || !(covariance[i][i] > 0)) {
                throw new IllegalArgumentException("variance must be above 0: " + this.unknowns.get(i));
            }
        }
    }

    /** Nothing is believed of anything. */
    public static Belief nothing() {
        return independent(List.of());
    }

    /** Unknowns of which each is known by itself. */
    public static Belief independent(List<Single> singles) {
        int size = singles.size();
        double[] positions = new double[size];
        double[][] covariance = new double[size][size];
        for (int i = 0; i < size; i++) {
            Single single = singles.get(i);
            positions[i] = single.unknown().trait().position(single.valueRatio());
            covariance[i][i] = single.axisSd() * single.axisSd();
        }
        return new Belief(singles.stream().map(Single::unknown).toList(), positions, covariance);
    }

    /**
     * Unknowns with their correlations.
     *
     * @param correlations row i holds those of unknown i with all before it
     */
    public static Belief correlated(List<Single> singles, double[][] correlations) {
        Belief belief = independent(singles);
        double[][] covariance = belief.covariance();
        for (int i = 0; i < covariance.length; i++) {
            if (correlations[i].length != i)
                throw new IllegalArgumentException("row " + i + " must have " + i + " members");
            for (int j = 0; j < i; j++) {
                double together = correlations[i][j]
                        * singles.get(i).axisSd()
                        * singles.get(j).axisSd();
                covariance[i][j] = together;
                covariance[j][i] = together;
            }
        }
        mustBePositive(covariance);
        return new Belief(belief.unknowns, belief.positions, covariance);
    }

    /** Throws IllegalArgumentException for correlations no figures can have together. */
    private static void mustBePositive(double[][] covariance) {
        if (covariance.length == 0) return;
        double[][] scaled = new double[covariance.length][covariance.length];
        for (int i = 0; i < scaled.length; i++) {
            for (int j = 0; j < scaled.length; j++) {
                scaled[i][j] = covariance[i][j] / Math.sqrt(covariance[i][i] * covariance[j][j]);
            }
        }
        try {
            new CholeskyDecomposition(MatrixUtils.createRealMatrix(scaled), LEAST_PIVOT_RATIO, LEAST_PIVOT_RATIO);
        } catch (MathIllegalArgumentException notPositive) {
            throw new IllegalArgumentException("these correlations exclude each other", notPositive);
        }
    }

    /** This and another belief about other things, independent of each other. */
    public Belief and(Belief other) {
        List<Unknown> all = new ArrayList<>(unknowns);
        all.addAll(other.unknowns);
        int mine = unknowns.size();
        double[] joined = Arrays.copyOf(positions, all.size());
        System.arraycopy(other.positions, 0, joined, mine, other.positions.length);
        double[][] joint = new double[all.size()][all.size()];
        for (int i = 0; i < mine; i++) System.arraycopy(covariance[i], 0, joint[i], 0, mine);
        for (int i = 0; i < other.positions.length; i++) {
            System.arraycopy(other.covariance[i], 0, joint[mine + i], mine, other.positions.length);
        }
        return new Belief(all, joined, joint);
    }

    /** This and what another belief says of other things; of two things of one name the first counts. */
    public Belief andNew(Belief other) {
        return and(other.only(unknown -> !unknowns.contains(unknown)));
    }

    /** What is believed of some of the unknowns, whatever the others are. */
    public Belief only(Predicate<Unknown> wanted) {
        int[] kept = java.util.stream.IntStream.range(0, unknowns.size())
                .filter(i -> wanted.test(unknowns.get(i)))
                .toArray();
        double[] keptPositions = new double[kept.length];
        double[][] keptCovariance = new double[kept.length][kept.length];
        List<Unknown> keptUnknowns = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            keptUnknowns.add(unknowns.get(kept[i]));
            keptPositions[i] = positions[kept[i]];
            for (int j = 0; j < kept.length; j++) keptCovariance[i][j] = covariance[kept[i]][kept[j]];
        }
        return new Belief(keptUnknowns, keptPositions, keptCovariance);
    }

    /** This belief with what the other says of the same unknowns in its place; what else it knows is left out. */
    public Belief knowing(Belief other) {
        return overriddenBy(other.only(unknowns::contains));
    }

    /** This belief where the other says nothing, the other where it does. */
    public Belief overriddenBy(Belief other) {
        return only(unknown -> !other.unknowns.contains(unknown)).and(other);
    }

    /**
     * Whether this says of an unknown what the other, of the same unknowns, did not: surer, elsewhere, or together with
     * another. To have used a thing is not to know it.
     */
    public boolean tellsMoreThan(Belief before, Unknown unknown) {
        int here = index(unknown);
        int there = before.index(unknown);
        double sd = before.axisSd(unknown);
        double surer = 1 - axisSd(unknown) / sd;
        double moved = Math.abs(positions[here] - before.positions[there]) / sd;
        return surer > TOLD_RATIO || moved > TOLD_RATIO;
    }

    /**
     * The same belief moved by one standard deviation along each axis of its covariance: what hangs on the unknowns has
     * the sum of the squares of its changes for its variance, as far as it is linear in them.
     */
    public List<Belief> deviations() {
        if (unknowns.isEmpty()) return List.of();
        double[][] root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance), LEAST_PIVOT_RATIO, 0)
                .getL()
                .getData();
        List<Belief> moved = new ArrayList<>();
        for (int j = 0; j < positions.length; j++) {
            double[] elsewhere = positions.clone();
            for (int i = j; i < elsewhere.length; i++) elsewhere[i] += root[i][j];
            moved.add(new Belief(unknowns, elsewhere, covariance));
        }
        return moved;
    }

    public List<Unknown> unknowns() {
        return unknowns;
    }

    /** The most probable values. */
    public Values values() {
        return valuesAt(positions);
    }

    public Values valuesAt(double[] places) {
        double[] values = new double[places.length];
        for (int i = 0; i < places.length; i++)
            values[i] = unknowns.get(i).trait().value(places[i]);
        return new Values(unknowns, values);
    }

    /** Standard deviation on the trait's axis. */
    public double axisSd(Unknown unknown) {
        int i = index(unknown);
        return Math.sqrt(covariance[i][i]);
    }

    /** Correlation of two unknowns, −1 to 1. */
    public double correlation(Unknown one, Unknown other) {
        return covariance[index(one)][index(other)] / (axisSd(one) * axisSd(other));
    }

    /** The most probable value of one unknown, in its trait's unit. */
    public double value(Unknown unknown) {
        return unknown.trait().value(positions[index(unknown)]);
    }

    /** P10, P50 and P90 of one unknown. */
    public Interval interval(Unknown unknown) {
        int i = index(unknown);
        double reach = Interval.TENTH_SD * axisSd(unknown);
        Trait trait = unknown.trait();
        return new Interval(
                trait.value(positions[i] - reach), trait.value(positions[i]), trait.value(positions[i] + reach));
    }

    /** Most probable positions on the traits' axes; a copy. */
    public double[] positions() {
        return positions.clone();
    }

    /** Covariance on the traits' axes; a copy. */
    public double[][] covariance() {
        return Arrays.stream(covariance).map(double[]::clone).toArray(double[][]::new);
    }

    private int index(Unknown unknown) {
        int i = unknowns.indexOf(unknown);
        if (i < 0) throw new IllegalArgumentException("nothing is believed of " + unknown);
        return i;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Belief belief
                && unknowns.equals(belief.unknowns)
                && Arrays.equals(positions, belief.positions)
                && Arrays.deepEquals(covariance, belief.covariance);
    }

    @Override
    public int hashCode() {
        return 31 * unknowns.hashCode() + Arrays.hashCode(positions);
    }

    @Override
    public String toString() {
        return unknowns + " at " + Arrays.toString(positions);
    }
}
