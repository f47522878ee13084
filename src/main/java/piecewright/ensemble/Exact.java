package piecewright.ensemble;

import java.util.random.RandomGenerator;

/** Scales and eyes that never err. */
final class Exact implements RandomGenerator {
    @Override
    public long nextLong() {
        return 0;
    }

    @Override
    public double nextDouble() {
        return 0.5;
    }

    @Override
    public double nextGaussian() {
        return 0;
    }
}
