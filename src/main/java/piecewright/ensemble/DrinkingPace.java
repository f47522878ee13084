package piecewright.ensemble;

import java.util.ArrayList;
import java.util.List;
import piecewright.ensemble.Script.Line;
import piecewright.plan.ActKind;
import piecewright.plan.Blueprint;

/**
 * What a drained weight tells of how fast the lot drinks: the planned steep worked out for lots slow and fast, and read
 * backwards. One rate is learned, as the estimator of a journal does with more; a single weighing is not believed whole.
 */
final class DrinkingPace {
    /** Judgement: lots beyond are not believed; ln of the rate about what the plan takes it for. */
    private static final double[] LN_RATES = {-0.9, -0.6, -0.3, 0, 0.3, 0.6, 0.9};
    /** Judgement: a drained weigh-in errs by half a point, and what else is not known of the lot by as much. */
    private static final double WEIGHED_SD_FRACTION = 0.008;

    private final double priorSd;
    /** By planned drain, then by rate: drained moisture, wet basis. */
    private final List<double[]> drainedFraction;

    private DrinkingPace(double priorSd, List<double[]> drainedFraction) {
        this.priorSd = priorSd;
        this.drainedFraction = drainedFraction;
    }

    static DrinkingPace of(Script script) {
        Blueprint blueprint = script.blueprint();
        Belief prior = Belief.prior(blueprint);
        double priorSd = prior.sd(Doubt.STEEP_RATE);
        List<double[]> drained = new ArrayList<>();
        for (Line drain : script.of(ActKind.DRAIN)) drained.add(new double[LN_RATES.length]);
        for (int rate = 0; rate < LN_RATES.length; rate++) {
            Reality reality = ModelReality.drinking(blueprint, Math.exp(LN_RATES[rate]));
            UnderWay piece = new UnderWay(script, reality, new Exact());
            int drains = 0;
            for (Line line : script.steep()) {
                piece.walkTo(line.minute());
                boolean isDrain = line.visit().kind() == ActKind.DRAIN;
                double found =
                        piece.meet(line.visit()).found().mass().moisture().wetBasisFraction();
                if (isDrain) drained.get(drains++)[rate] = found;
            }
        }
        return new DrinkingPace(priorSd, drained);
    }

    /** By how much the drained moisture rises from the planned drain before to this one, in a lot that drinks so. */
    double gainFraction(int drain, double rateRatio) {
        int last = drainedFraction.size() - 1;
        int to = Math.max(1, Math.min(drain, last));
        if (last < 1) return 0;
        double rate = Math.log(rateRatio);
        return at(drainedFraction.get(to), rate) - at(drainedFraction.get(to - 1), rate);
    }

    private static double at(double[] fractions, double lnRate) {
        int above = 1;
        while (above < LN_RATES.length - 1 && LN_RATES[above] < lnRate) above++;
        double share = (lnRate - LN_RATES[above - 1]) / (LN_RATES[above] - LN_RATES[above - 1]);
        return fractions[above - 1] + share * (fractions[above] - fractions[above - 1]);
    }

    /** The multiplier of the plan's rate that a drained weight tells; drain counts from 0. */
    double rateRatio(int drain, double weighedFraction) {
        double[] fractions = drainedFraction.get(Math.min(drain, drainedFraction.size() - 1));
        int at = 1;
        while (at < fractions.length - 1 && fractions[at] < weighedFraction) at++;
        double slope = (fractions[at] - fractions[at - 1]) / (LN_RATES[at] - LN_RATES[at - 1]);
        if (slope <= 0) return 1;
        double told = LN_RATES[at - 1] + (weighedFraction - fractions[at - 1]) / slope;
        double errorSd = WEIGHED_SD_FRACTION / slope;
        double believed = priorSd * priorSd / (priorSd * priorSd + errorSd * errorSd);
        double most = LN_RATES[LN_RATES.length - 1];
        return Math.exp(believed * Math.max(-most, Math.min(most, told)));
    }
}
