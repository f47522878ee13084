package piecewright.campaign;

import java.util.List;
import java.util.Random;

/** Chance that comes the same again for the same seed. */
final class Dice {
    private final Random random;

    Dice(long seed) {
        // neighbouring seeds give neighbouring first draws
        this.random = new Random(seed * 0x9E3779B97F4A7C15L);
    }

    boolean once(double chance) {
        return random.nextDouble() < chance;
    }

    int from(int least, int most) {
        return least + random.nextInt(most - least + 1);
    }

    double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    double spread(double sd) {
        return random.nextGaussian() * sd;
    }

    @SafeVarargs
    final <T> T one(T... of) {
        return of[random.nextInt(of.length)];
    }

    <T> T of(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
