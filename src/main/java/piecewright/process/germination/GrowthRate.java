package piecewright.process.germination;

/**
 * What is believed of a lot's growth rate: the logarithm of its multiplier ρ with variance, corrected by acrospire
 * counts.
 */
public record GrowthRate(double logRatio, double varianceRatio) {
    /** Judgement: standard deviation of ln ρ from lot to lot. */
    public static final double PRIOR_SD_RATIO = 0.2;
    /** Judgement: warmth from steep-out to chit, K·d, in the sums that counts are compared by. */
    private static final double CHIT_KELVIN_DAYS = 12;
    /** Judgement: warmth from chit to full modification, K·d. */
    private static final double GROWTH_KELVIN_DAYS = 67;
    /** Judgement: error of a count that more corns do not lessen: sampling place, reading. */
    private static final double COUNT_SD_RATIO = 0.10;

    public GrowthRate {
        if (!(varianceRatio > 0)) throw new IllegalArgumentException("varianceRatio must be above 0: " + varianceRatio);
    }

    /** Before any count: ρ = 1. */
    public static GrowthRate prior() {
        return new GrowthRate(0, PRIOR_SD_RATIO * PRIOR_SD_RATIO);
    }

    /**
     * After one more count.
     *
     * @param observedFraction mean acrospire of the germinated corns counted, share of the corn
     * @param predictedFraction mean acrospire a lot of ρ = 1 would have had, share of the corn
     * @param corns corns counted, 1 or more
     */
    public GrowthRate counted(double observedFraction, double predictedFraction, int corns, Unevenness unevenness) {
        if (corns < 1) throw new IllegalArgumentException("corns must be 1 or more: " + corns);
        double variance = unevenness.cvRatio() * unevenness.cvRatio() / corns + COUNT_SD_RATIO * COUNT_SD_RATIO;
        double weight = varianceRatio / (varianceRatio + variance);
        double seen = observedLogRatio(observedFraction, predictedFraction);
        return new GrowthRate(logRatio + weight * (seen - logRatio), varianceRatio * (1 - weight));
    }

    /** ln of the rate one count speaks for by itself. */
    public static double observedLogRatio(double observedFraction, double predictedFraction) {
        return Math.log((CHIT_KELVIN_DAYS + GROWTH_KELVIN_DAYS * observedFraction)
                / (CHIT_KELVIN_DAYS + GROWTH_KELVIN_DAYS * predictedFraction));
    }

    /** The multiplier ρ. */
    public double rateRatio() {
        return Math.exp(logRatio);
    }
}
