package piecewright.plan.search;

import java.util.Arrays;

/**
 * The candidates at which growth cast at one may end; none where nothing longer is worth it.
 *
 * @param ats the candidates, in time order
 * @param withers cost of turnings up to there and of spreading to wither there; infinite where that cannot be
 * @param loads the same of ending growth there green, and all after it at least, whatever has grown
 * @param wettestFraction moisture of the wettest piece, wet basis
 * @param grownRatio growth since casting at most, by class of moisture
 */
record Outlook(int[] ats, double[] withers, double[] loads, float[] wettestFraction, float[][] grownRatio) {

    /** Gathers an outlook, candidate by candidate. */
    static final class Gathered {
        private final int[] ats;
        private final double[] withers;
        private final double[] loads;
        private final float[] wettest;
        private final float[][] grown;
        private int size;

        Gathered(int classes, int most) {
            ats = new int[most];
            withers = new double[most];
            loads = new double[most];
            wettest = new float[most];
            grown = new float[classes][most];
        }

        /** One more candidate, if growth may end there at all. */
        void add(int at, double wither, double load, double wettestFraction, double[] grownRatio) {
            if (wither == Double.POSITIVE_INFINITY && load == Double.POSITIVE_INFINITY) return;
            ats[size] = at;
            withers[size] = wither;
            loads[size] = load;
            wettest[size] = (float) wettestFraction;
            for (int row = 0; row < grown.length; row++) grown[row][size] = (float) grownRatio[row];
            size++;
        }

        Outlook outlook() {
            float[][] cut = new float[grown.length][];
            for (int row = 0; row < cut.length; row++) cut[row] = Arrays.copyOf(grown[row], size);
            return new Outlook(
                    Arrays.copyOf(ats, size),
                    Arrays.copyOf(withers, size),
                    Arrays.copyOf(loads, size),
                    Arrays.copyOf(wettest, size),
                    cut);
        }
    }
}
