package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.junit.jupiter.api.Test;

class HypercubeTest {
    private static final int AXES = Member.DIMENSIONS;
    private static final int COUNT = 200;

    private final double[][] points = new Hypercube(AXES, new SplittableRandom(7)).normals(COUNT);

    /** Hipparchus' normal distribution puts one point into each two-hundredth. */
    @Test
    void everyShareOfAnAxisHoldsOnePoint() {
        NormalDistribution normal = new NormalDistribution();
        for (int axis = 0; axis < AXES; axis++) {
            int column = axis;
            int[] shares = Arrays.stream(points)
                    .mapToInt(point -> (int) (COUNT * normal.cumulativeProbability(point[column])))
                    .sorted()
                    .toArray();
            for (int i = 0; i < COUNT; i++) assertEquals(i, shares[i], "axis " + axis);
        }
    }

    /** By Hipparchus' correlation; points drawn at random would differ from none by 0.07 and, of a thousand pairs, 0.2. */
    @Test
    void noTwoAxesGoHandInHand() {
        double[][] correlation =
                new PearsonsCorrelation(points).getCorrelationMatrix().getData();
        for (int i = 0; i < AXES; i++) {
            for (int j = 0; j < i; j++) {
                assertTrue(Math.abs(correlation[i][j]) < 0.06, i + " and " + j + ": " + correlation[i][j]);
            }
        }
    }

    @Test
    void aFewPointsAreSpreadTooThoughTheyCannotBeTakenApart() {
        assertEquals(20, new Hypercube(AXES, new SplittableRandom(7)).normals(20).length);
    }
}
