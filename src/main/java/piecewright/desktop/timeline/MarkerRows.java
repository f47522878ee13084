package piecewright.desktop.timeline;

/** Stacks markers that would cover each other. */
final class MarkerRows {
    private MarkerRows() {}

    /**
     * The row of each marker, 0 at the foot; the lowest in which it covers none before it, else the one that covers least.
     *
     * @param xs middles of the markers, rising
     */
    static int[] of(double[] xs, double widthPixels, int rows) {
        double[] until = new double[rows];
        java.util.Arrays.fill(until, Double.NEGATIVE_INFINITY);
        int[] row = new int[xs.length];
        for (int i = 0; i < xs.length; i++) {
            int best = 0;
            for (int each = 0; each < rows; each++) {
                if (until[each] <= xs[i] - widthPixels / 2) {
                    best = each;
                    break;
                }
                if (until[each] < until[best]) best = each;
            }
            row[i] = best;
            until[best] = xs[i] + widthPixels / 2;
        }
        return row;
    }
}
