package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws members from a belief, evenly by a {@link Hypercube}: the same belief gives the same members. */
public final class Members {
    /** Enough for P10 and P90 to be steady within a tenth of the band. */
    public static final int USUAL = 200;

    private static final long SEED = 20_310_503;

    private Members() {}

    /** One point of the hypercube, and luck. */
    private record Draw(double[] normals, long noiseSeed) {}

    /** The usual draws hang on no plan: they are made once. */
    private static final class Usual {
        private static final List<Draw> DRAWS = draws(USUAL, SEED);
    }

    /** So many members, count at least 1. */
    public static List<Member> drawn(Belief belief, int count) {
        return made(belief, count == USUAL ? Usual.DRAWS : draws(count, SEED));
    }

    /** The same of another seed. */
    static List<Member> drawn(Belief belief, int count, long seed) {
        return made(belief, draws(count, seed));
    }

    private static List<Draw> draws(int count, long seed) {
        if (count < 1) throw new IllegalArgumentException("count must be 1 or more: " + count);
        SplittableRandom random = new SplittableRandom(seed);
        List<Draw> draws = new ArrayList<>(count);
        for (double[] normals : new Hypercube(Member.DIMENSIONS, random).normals(count)) {
            draws.add(new Draw(normals, random.nextLong()));
        }
        return draws;
    }

    private static List<Member> made(Belief belief, List<Draw> draws) {
        return draws.stream()
                .map(draw -> new Member(belief, draw.normals(), draw.noiseSeed()))
                .toList();
    }

    /** One member drawn at random, for tests and synthetic truths. */
    public static Member random(Belief belief, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double[] normals = new double[Member.DIMENSIONS];
        for (int i = 0; i < normals.length; i++) normals[i] = random.nextGaussian();
        return new Member(belief, normals, random.nextLong());
    }
}
