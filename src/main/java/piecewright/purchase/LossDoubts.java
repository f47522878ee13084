package piecewright.purchase;

import piecewright.belief.Priors;

/**
 * How well the losses are known: standard deviations, of a loss as a share of itself unless the name says fraction.
 *
 * @param untestedGrowingRatio of the growing share where no dish was counted
 * @param endMoistureFraction of the malt's moisture
 */
public record LossDoubts(
        double weighedRatio,
        double guessedRatio,
        double leachingRatio,
        double respirationRatio,
        double rootletsRatio,
        double untestedGrowingRatio,
        double endMoistureFraction) {
    /** Judgement: a loss that was weighed on a sample. */
    public static final double WEIGHED_RATIO = 0.2;
    /** Judgement: a loss that was guessed. */
    public static final double GUESSED_RATIO = 0.5;
    /** Judgement: remembered steep losses of 0.5 to 1.5 %. */
    public static final double LEACHING_RATIO = 0.4;
    /** Judgement: remembered losses of 3.5 to 6 %, as far apart as the heat that goes with them. */
    public static final double RESPIRATION_RATIO = Priors.RESPIRATION_SD;
    /** Judgement: remembered losses of 2.5 to 4 %. */
    public static final double ROOTLETS_RATIO = 0.25;
    /** Judgement: malting grain that nobody tested grows at 90 to 99 %. */
    public static final double UNTESTED_GROWING_RATIO = 0.03;
    /** Judgement: off the kiln, half a point. */
    public static final double END_MOISTURE_FRACTION = 0.005;

    public static LossDoubts defaults() {
        return new LossDoubts(
                WEIGHED_RATIO,
                GUESSED_RATIO,
                LEACHING_RATIO,
                RESPIRATION_RATIO,
                ROOTLETS_RATIO,
                UNTESTED_GROWING_RATIO,
                END_MOISTURE_FRACTION);
    }
}
