package piecewright.truth;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Four hundred kernels, each with a pace of its own: chits by a Q10 law once moist (half of them in 36 h at 15 °C, slower
 * under water), then grows its acrospire by another (the whole length in 5.15 d at 15 °C and 44 %; Q10 1.95, so that 16
 * to 24 °C saves the published day and a half).
 */
final class Corns {
    private static final int MANY = 400;
    private static final double CHIT_HOURS_AT_15 = 36;
    private static final double CHIT_SPREAD = 0.20;
    private static final double WHOLE_DAYS_AT_15 = 5.15;
    private static final double UNDER_WATER = 0.75;
    private static final double LONGEST = 1.3;

    private final boolean[] alive = new boolean[MANY];
    private final double[] chitPace = new double[MANY];
    private final double[] growPace = new double[MANY];
    private final double[] chit = new double[MANY];
    private final double[] length = new double[MANY];

    Corns(double germinating, Hidden hidden, SplittableRandom random) {
        for (int i = 0; i < MANY; i++) {
            alive[i] = random.nextDouble() < germinating;
            chitPace[i] = hidden.chits() * Math.exp(CHIT_SPREAD * Hidden.normal(random));
            growPace[i] = hidden.grows() * Math.exp(hidden.evenness() * Hidden.normal(random));
        }
    }

    void live(double grainC, double moisture, boolean underWater, double hours) {
        double air = underWater ? UNDER_WATER : 1;
        double toChit =
                moisture < 0.30 ? 0 : air * hours / CHIT_HOURS_AT_15 * Math.exp(0.085 * (Math.min(grainC, 25) - 15));
        double toGrow = air * hours / 24 / WHOLE_DAYS_AT_15 * warmth(grainC) * wetness(moisture);
        for (int i = 0; i < MANY; i++) {
            if (!alive[i]) continue;
            if (chit[i] < 1) chit[i] += chitPace[i] * toChit;
            else length[i] = Math.min(LONGEST, length[i] + growPace[i] * toGrow);
        }
    }

    private static double warmth(double grainC) {
        double rising = Math.pow(1.95, (Math.min(grainC, 26) - 15) / 10) * Math.min(1, Math.max(0, grainC / 4));
        return rising * Math.min(1, Math.max(0, (38 - grainC) / 12));
    }

    private static double wetness(double moisture) {
        return 1.08 / (1 + Math.exp(-(100 * moisture - 37.5) / 2.6));
    }

    /** Share of the living that show the tip. */
    double chitted() {
        int living = 0;
        int shown = 0;
        for (int i = 0; i < MANY; i++) {
            if (alive[i]) living++;
            if (alive[i] && chit[i] >= 1) shown++;
        }
        return (double) shown / living;
    }

    /** Mean acrospire of the living, share of the kernel. */
    double acrospire() {
        double sum = 0;
        int living = 0;
        for (int i = 0; i < MANY; i++) {
            if (alive[i]) living++;
            sum += length[i];
        }
        return sum / living;
    }

    double living() {
        int living = 0;
        for (boolean one : alive) if (one) living++;
        return (double) living / MANY;
    }

    /** How many of a handful, dead ones among them, show the tip. */
    int chittedAmong(int handful, SplittableRandom random) {
        int shown = 0;
        for (int n = 0; n < handful; n++) if (chit[random.nextInt(MANY)] >= 1) shown++;
        return shown;
    }

    /** A handful of chitted ones sorted by acrospire: none to see, about ¼, ½, ¾, the whole, out of the husk. */
    List<Integer> sorted(int handful, SplittableRandom random) {
        Integer[] classes = new Integer[6];
        Arrays.fill(classes, 0);
        for (int n = 0; n < handful; ) {
            int i = random.nextInt(MANY);
            if (!alive[i]) continue;
            double seen = length[i] + 0.04 * Hidden.normal(random);
            int row = seen < 0.17 ? 0 : seen < 0.375 ? 1 : seen < 0.625 ? 2 : seen < 0.875 ? 3 : seen < 1.03 ? 4 : 5;
            classes[row]++;
            n++;
        }
        return List.of(classes);
    }
}
