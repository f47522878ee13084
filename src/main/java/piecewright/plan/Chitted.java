package piecewright.plan;

import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.SteepState;

/**
 * Corns counted for the root tip, and what the piece is held to be by them.
 *
 * @param shown how many showed it, 0 or more
 * @param of how many were looked at, dead ones among them, 1 or more
 */
public record Chitted(int shown, int of) {
    /** Judgement: χ forecast before any count, standard deviation of its logarithm; lots and cool rooms differ so much. */
    private static final double FORECAST_SD = 0.25;
    /** Judgement: how evenly a lot chits is known so well; it shifts what a share says of the middle corn. */
    private static final double EVENNESS_SD = 0.04;

    public Chitted {
        if (of < 1 || shown < 0 || shown > of) {
            throw new IllegalArgumentException("shown must be in 0..of: " + shown + ", " + of);
        }
    }

    /**
     * The piece with the chitting that count and forecast together say, each by how sure it is. All or none of the corns
     * tell a bound only. What was forecast to have grown since the chit goes with it.
     */
    PieceState held(PieceState forecast, Metabolism lot) {
        double least = 0.5 / of;
        double share = Math.min(1 - least, Math.max(least, (double) shown / of / lot.germinatingFraction()));
        double counted = Math.log(lot.chitRatio(share));
        double before = Math.log(Math.max(0.05, forecast.steep().chitRatio()));
        boolean bound = share >= 1 - least && before > counted || share <= least && before < counted;
        if (bound) return forecast;
        double spread = lot.parameters().chitSpreadRatio();
        double density = Math.exp(-Math.pow(counted / spread, 2) / 2) / Math.sqrt(2 * Math.PI);
        double sd = Math.hypot(EVENNESS_SD, spread * Math.sqrt(share * (1 - share) / of) / density);
        double weight = FORECAST_SD * FORECAST_SD / (FORECAST_SD * FORECAST_SD + sd * sd);
        return withChit(forecast, Math.exp(before + weight * (counted - before)));
    }

    private static PieceState withChit(PieceState forecast, double chitRatio) {
        SteepState steep = forecast.steep();
        double sinceBefore = steep.chitRatio() - 1;
        double since = Math.max(0, chitRatio - 1);
        double kept = sinceBefore <= 0 ? 1 : Math.min(1, since / sinceBefore);
        return forecast.withSteep(new SteepState(
                        steep.coreRatio(), steep.outerRatio(), steep.soakHours(), steep.waterChanges(), chitRatio))
                .withGrowth(forecast.growth()
                        .withGrowthRatio(kept * forecast.growth().growthRatio()));
    }
}
