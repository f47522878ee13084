package piecewright.ensemble;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import piecewright.colour.ColourBand;
import piecewright.grain.GrainLot;
import piecewright.house.Heater;
import piecewright.belief.Priors;
import piecewright.plan.Blueprint;
import piecewright.plan.KilnDoubt;
import piecewright.plan.Setup;
import piecewright.purchase.LossDoubts;

/**
 * What is believed of all doubts together: mean and covariance of their logarithms, in the order of {@link Doubt}. A
 * prior to begin with; after learning, a posterior.
 */
public final class Belief {
    /** Judgement: standard deviation of ln of a rate that earlier batches of the lot taught. */
    public static final double LEARNED_SD = 0.10;
    /** Judgement: keeps a covariance with perfectly known doubts invertible. */
    private static final double TINY_SD = 1e-9;

    private final double[] mean;
    private final double[][] covariance;
    private final double[][] factor;

    private Belief(double[] mean, double[][] covariance) {
        this.mean = mean;
        this.covariance = covariance;
        double[][] safe = copy(covariance);
        for (int i = 0; i < safe.length; i++) safe[i][i] += TINY_SD * TINY_SD;
        this.factor = new CholeskyDecomposition(MatrixUtils.createRealMatrix(safe), 1e-12, TINY_SD * TINY_SD / 2)
                .getL()
                .getData();
    }

    /**
     * A belief from mean and covariance of the logarithms, in the order of {@link Doubt}.
     *
     * @param covariance symmetric, positive semidefinite; copied
     */
    public static Belief of(double[] mean, double[][] covariance) {
        int size = Doubt.values().length;
        if (mean.length != size || covariance.length != size) {
            throw new IllegalArgumentException("need one row for each of " + size + " doubts: " + mean.length);
        }
        return new Belief(mean.clone(), copy(covariance));
    }

    /** What is believed before anything was weighed on the way: by what was tested of the lot and the kit. */
    public static Belief prior(Blueprint blueprint) {
        double[] sd = new double[Doubt.values().length];
        for (Doubt doubt : Doubt.values()) sd[doubt.ordinal()] = doubt.usualSd();
        byLot(sd, blueprint.request().lot());
        byKit(sd, blueprint.setup());
        double[][] covariance = new double[sd.length][sd.length];
        for (int i = 0; i < sd.length; i++) covariance[i][i] = sd[i] * sd[i];
        return new Belief(new double[sd.length], covariance);
    }

    private static void byKit(double[] sd, Setup setup) {
        sd[Doubt.COLOUR.ordinal()] = Math.log(ColourBand.ratioOf(setup.style())) / Doubt.P90_SD;
        Heater.HotAir air = setup.outfit().drying().dryer().air();
        if (air.flowMeasured()) sd[Doubt.AIR_FLOW.ordinal()] = KilnDoubt.MEASURED_LN_RATIO;
        boolean boxTested = setup.couching().stream()
                .anyMatch(couching -> couching.box().lossWPerK().isPresent());
        if (boxTested) sd[Doubt.BOX_LOSS.ordinal()] = Priors.TESTED_BOX_LOSS_SD;
    }

    private static void byLot(double[] sd, GrainLot lot) {
        learned(sd, Doubt.STEEP_RATE, lot.learned().steepRateRatio());
        learned(sd, Doubt.GROWTH, lot.learned().growthRateRatio());
        learned(sd, Doubt.KERNEL, lot.learned().kernelRatio());
        learned(sd, Doubt.RESPIRATION, lot.learned().respirationRatio());
        sd[Doubt.RAW_MOISTURE.ordinal()] =
                lot.moisture().sdFraction() / lot.moisture().moisture().wetBasisFraction();
        if (lot.size().floatersFraction().isPresent()) sd[Doubt.FLOATERS.ordinal()] = LossDoubts.WEIGHED_RATIO;
        lot.germinativeEnergyFraction()
                .ifPresent(share -> sd[Doubt.GERMINATION.ordinal()] = countedSd(share, corns(lot)));
    }

    private static void learned(double[] sd, Doubt doubt, OptionalDouble taught) {
        if (taught.isPresent()) sd[doubt.ordinal()] = LEARNED_SD;
    }

    /** Of ln share counted on so many corns, by the add-two rule so that 100 of 100 is not certainty. */
    private static double countedSd(double shareFraction, int corns) {
        double fraction = (shareFraction * corns + 2) / (corns + 4);
        return Math.sqrt((1 - fraction) / fraction / (corns + 4));
    }

    private static int corns(GrainLot lot) {
        return Math.max(1, lot.dishes().stream().mapToInt(dish -> dish.corns()).sum());
    }

    /** The same with one doubt known so well, whatever the others told of it. */
    public Belief known(Doubt doubt, double sd) {
        int at = doubt.ordinal();
        double[][] changed = copy(covariance);
        double ratio = Math.min(1, sd / Math.max(TINY_SD, sd(doubt)));
        for (int i = 0; i < changed.length; i++) {
            changed[at][i] *= ratio;
            changed[i][at] *= ratio;
        }
        return new Belief(mean.clone(), changed);
    }

    /** Mean of the logarithm. */
    public double mean(Doubt doubt) {
        return mean[doubt.ordinal()];
    }

    /** Standard deviation of the logarithm. */
    public double sd(Doubt doubt) {
        return Math.sqrt(covariance[doubt.ordinal()][doubt.ordinal()]);
    }

    /** Multipliers, one for each doubt in order, from as many independent standard normals. */
    double[] ratios(double[] normals) {
        double[] ratios = new double[mean.length];
        for (int i = 0; i < ratios.length; i++) {
            double log = mean[i];
            for (int j = 0; j <= i; j++) log += factor[i][j] * normals[j];
            ratios[i] = Math.exp(log);
        }
        return ratios;
    }

    private static double[][] copy(double[][] matrix) {
        return Arrays.stream(matrix).map(double[]::clone).toArray(double[][]::new);
    }
}
