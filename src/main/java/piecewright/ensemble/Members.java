package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/** Draws members from a belief, evenly by a shifted Sobol sequence: the same belief gives the same members. */
public final class Members {
    /** Enough for P10 and P90 to be steady within a tenth of the band. */
    public static final int USUAL = 200;

    private static final long SEED = 20_310_503;
    /** Judgement: keeps draws within seven standard deviations. */
    private static final double EDGE_RATIO = 1e-12;

    private Members() {}

    /** So many members, count at least 1. */
    public static List<Member> drawn(Belief belief, int count) {
        if (count < 1) throw new IllegalArgumentException("count must be 1 or more: " + count);
        SplittableRandom random = new SplittableRandom(SEED);
        double[] shift = random.doubles(Member.DIMENSIONS).toArray();
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(Member.DIMENSIONS);
        List<Member> members = new ArrayList<>(count);
        for (int i = 0; i < count; i++) {
            double[] point = sobol.nextVector();
            double[] normals = new double[Member.DIMENSIONS];
            for (int j = 0; j < normals.length; j++) normals[j] = normal((point[j] + shift[j]) % 1);
            members.add(new Member(belief, normals, random.nextLong()));
        }
        return members;
    }

    /** One member drawn at random, for tests and synthetic truths. */
    public static Member random(Belief belief, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] normals = new double[Member.DIMENSIONS];
        for (int i = 0; i < normals.length; i++) normals[i] = random.nextGaussian();
        return new Member(belief, normals, random.nextLong());
    }

    private static double normal(double share) {
        double inside = Math.max(EDGE_RATIO, Math.min(1 - EDGE_RATIO, share));
        return Math.sqrt(2) * Erf.erfInv(2 * inside - 1);
    }
}
