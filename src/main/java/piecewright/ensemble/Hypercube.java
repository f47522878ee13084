package piecewright.ensemble;

import java.util.Comparator;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/**
 * A Latin hypercube of standard normals: along each axis every share of one in count holds just one point, and no two
 * axes go hand in hand. Its order comes from a shifted Sobol sequence, whose first few hundred points are neither in so
 * many dimensions; what still goes together is taken apart by the method of Iman and Conover.
 */
final class Hypercube {
    /** Judgement: with fewer points than this for an axis nothing can be taken apart. */
    private static final int LEAST_PER_AXIS = 2;
    /** Judgement: keeps draws within seven standard deviations. */
    private static final double EDGE_RATIO = 1e-12;

    private final int axes;
    private final SplittableRandom random;

    Hypercube(int axes, SplittableRandom random) {
        this.axes = axes;
        this.random = random;
    }

    /** So many points, each an array of standard normals. */
    double[][] normals(int count) {
        double[][] normals = evenly(sobol(count));
        return count < LEAST_PER_AXIS * axes ? normals : evenly(apart(normals));
    }

    private double[][] sobol(int count) {
        double[] shift = random.doubles(axes).toArray();
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(axes);
        double[][] points = new double[count][];
        for (int i = 0; i < count; i++) {
            points[i] = sobol.nextVector();
            for (int j = 0; j < axes; j++) points[i][j] = (points[i][j] + shift[j]) % 1;
        }
        return points;
    }

    /** The same order along each axis, evenly as a normal distribution has it. */
    private double[][] evenly(double[][] points) {
        double[][] even = new double[points.length][axes];
        for (int j = 0; j < axes; j++) {
            int axis = j;
            int[] order = IntStream.range(0, points.length)
                    .boxed()
                    .sorted(Comparator.comparingDouble(i -> points[i][axis]))
                    .mapToInt(Integer::intValue)
                    .toArray();
            for (int rank = 0; rank < order.length; rank++) {
                even[order[rank]][j] = normal((rank + random.nextDouble()) / points.length);
            }
        }
        return even;
    }

    /** Turned so that no two axes are correlated. */
    private static double[][] apart(double[][] normals) {
        RealMatrix points = MatrixUtils.createRealMatrix(normals);
        RealMatrix correlation = points.transpose().multiply(points).scalarMultiply(1.0 / normals.length);
        RealMatrix root = new CholeskyDecomposition(correlation).getL();
        return points.multiply(
                        new LUDecomposition(root).getSolver().getInverse().transpose())
                .getData();
    }

    private static double normal(double share) {
        double inside = Math.max(EDGE_RATIO, Math.min(1 - EDGE_RATIO, share));
        return Math.sqrt(2) * Erf.erfInv(2 * inside - 1);
    }
}
