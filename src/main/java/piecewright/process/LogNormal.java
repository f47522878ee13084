package piecewright.process;

/** The log-normal spread of a rate among the corns of a lot: median 1, cv the standard deviation of its logarithm. */
public final class LogNormal {
    /** Source: Abramowitz and Stegun 1964, Handbook of Mathematical Functions, 26.2.17; error below 7.5e-8. */
    private static final double[] TAIL = {0.319381530, -0.356563782, 1.781477937, -1.821255978, 1.330274429};

    /** Source: Abramowitz and Stegun 1964, 26.2.17, the constant p. */
    private static final double TAIL_SCALE_RATIO = 0.2316419;

    private LogNormal() {}

    /**
     * Share of corns whose figure lies below a ratio of the median.
     *
     * @param ratio 0 or less gives 0
     * @param cvRatio above 0
     */
    public static double shareBelow(double ratio, double cvRatio) {
        return ratio <= 0 ? 0 : normalShareBelow(Math.log(ratio) / cvRatio);
    }

    /** Share of a normal population below the given number of standard deviations from its mean. */
    public static double normalShareBelow(double deviations) {
        double size = Math.abs(deviations);
        double t = 1 / (1 + TAIL_SCALE_RATIO * size);
        double sum = 0;
        for (int i = TAIL.length - 1; i >= 0; i--) sum = (sum + TAIL[i]) * t;
        double tail = Math.exp(-size * size / 2) / Math.sqrt(2 * Math.PI) * sum;
        return deviations > 0 ? 1 - tail : tail;
    }
}
