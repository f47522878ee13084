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
    /** Judgement: off the kiln, half a point. */
    public static final double END_MOISTURE_FRACTION = 0.005;

    public static LossDoubts defaults() {
        return new LossDoubts(
                Priors.WEIGHED_LOSS_SD,
                Priors.GUESSED_LOSS_SD,
                Priors.LEACHING_SD,
                Priors.RESPIRATION_SD,
                Priors.ROOTLETS_SD,
                Priors.UNTESTED_GROWING_SD,
                END_MOISTURE_FRACTION);
    }
}
