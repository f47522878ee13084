package piecewright.plan;

import piecewright.process.LogNormal;

/**
 * What it costs to plan for a figure off its aim: what a batch is worth times how much likelier the malt then misses its
 * style, for a figure that in the end falls normally about where it was planned. Rises with the distance.
 *
 * @param toleranceFraction farther from its aim than this the figure misses
 * @param sdFraction how far it falls from where it was planned, one standard deviation
 */
record Miss(double toleranceFraction, double sdFraction) {
    /**
     * Judgement: what a batch is worth, twice the five hours of hands-on work that most take, and the grain, as minutes of
     * work.
     */
    static final double WORTH_MINUTES = 600;
    /** Judgement: among those that hit alike the nearer one, minutes at the tolerance. */
    private static final double DRAWS_MINUTES = 10;

    /** Cost-minutes of so far off, 0 or more. */
    double costMinutes(double offFraction) {
        double off = offFraction / toleranceFraction;
        return WORTH_MINUTES * (chance(0) - chance(offFraction)) + DRAWS_MINUTES * off * off;
    }

    /** How likely it falls within the tolerance when planned so far off. */
    double chance(double offFraction) {
        return LogNormal.normalShareBelow((toleranceFraction - offFraction) / sdFraction)
                - LogNormal.normalShareBelow((-toleranceFraction - offFraction) / sdFraction);
    }
}
