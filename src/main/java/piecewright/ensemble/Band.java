package piecewright.ensemble;

import java.util.Arrays;

/** Where a figure lies: below p10 one time in ten, below p50 every other time, below p90 nine times in ten. */
public record Band(double p10, double p50, double p90) {
    public Band {
        if (!(p10 <= p50 && p50 <= p90)) {
            throw new IllegalArgumentException("need p10 <= p50 <= p90: " + p10 + ", " + p50 + ", " + p90);
        }
    }

    /** The band of so many equally likely figures, at least one; the array is left alone. */
    public static Band of(double[] figures) {
        double[] sorted = figures.clone();
        Arrays.sort(sorted);
        return new Band(at(sorted, 0.1), at(sorted, 0.5), at(sorted, 0.9));
    }

    public boolean contains(double figure) {
        return figure >= p10 && figure <= p90;
    }

    /** The quantile at rank p (n + 1), so that a further draw lies below it with chance p. */
    private static double at(double[] sorted, double share) {
        double rank = Math.max(0, Math.min(sorted.length - 1, share * (sorted.length + 1) - 1));
        int below = (int) rank;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (rank - below) * (sorted[above] - sorted[below]);
    }
}
