package piecewright.belief;

/** Eight chances in ten: a tenth lies below low, half below middle, a tenth above high; in the trait's unit. */
public record Interval(double low, double middle, double high) {
    /** Source: the normal distribution, standard deviations from the middle to the ninetieth percentile. */
    public static final double TENTH_SD = 1.2815515655446004;

    public Interval {
        if (!(low <= middle && middle <= high)) {
            throw new IllegalArgumentException("need low <= middle <= high: " + low + ", " + middle + ", " + high);
        }
    }

    public boolean contains(double value) {
        return value >= low && value <= high;
    }
}
