package piecewright.journal;

import java.util.List;

/**
 * Germinated corns sorted by the length of the acrospire as a share of the corn's.
 *
 * @param corns six counts: none to see, about ¼, ½, ¾, the whole corn, out of the husk; at least one corn in all
 */
public record AcrospireCount(List<Integer> corns) {
    /** Judgement: mean length in each class, share of the corn; estimate. */
    private static final double[] CLASS_MEAN_FRACTION = {0.10, 0.25, 0.50, 0.75, 0.95, 1.10};

    public static final int CLASSES = CLASS_MEAN_FRACTION.length;

    public AcrospireCount {
        corns = List.copyOf(corns);
        if (corns.size() != CLASSES || corns.stream().anyMatch(count -> count < 0 || count > 100_000)) {
            throw new IllegalArgumentException("corns must be six counts, 0 or more: " + corns);
        }
        if (corns.stream().allMatch(count -> count == 0)) throw new IllegalArgumentException("no corns were counted");
    }

    /** How many were counted. */
    public int of() {
        return corns.stream().mapToInt(Integer::intValue).sum();
    }

    /** Mean length, share of the corn. */
    public double meanFraction() {
        double sum = 0;
        for (int row = 0; row < CLASSES; row++) sum += corns.get(row) * CLASS_MEAN_FRACTION[row];
        return sum / of();
    }

    /** Standard deviation of the lengths, share of the corn. */
    public double sdFraction() {
        double mean = meanFraction();
        double sum = 0;
        for (int row = 0; row < CLASSES; row++) sum += corns.get(row) * Math.pow(CLASS_MEAN_FRACTION[row] - mean, 2);
        return Math.sqrt(sum / of());
    }

    /** The length that so large a share of the corns does not reach or just reaches; shareFraction in (0, 1). */
    public double quantileFraction(double shareFraction) {
        int seen = 0;
        for (int row = 0; row < CLASSES; row++) {
            seen += corns.get(row);
            if (seen >= shareFraction * of()) return CLASS_MEAN_FRACTION[row];
        }
        return CLASS_MEAN_FRACTION[CLASSES - 1];
    }

    /** Share of the corns whose shoot is out of the husk. */
    public double overgrownFraction() {
        return (double) corns.get(CLASSES - 1) / of();
    }
}
