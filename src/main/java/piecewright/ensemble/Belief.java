package piecewright.ensemble;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import piecewright.belief.Interval;
import piecewright.belief.Priors;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.colour.ColourBand;
import piecewright.grain.GrainLot;
import piecewright.plan.Blueprint;
import piecewright.plan.Outfit;
import piecewright.plan.Setup;

/**
 * What is believed of all doubts together: mean and covariance of their logarithms, in the order of {@link Doubt}. A
 * prior to begin with; after learning, a posterior.
 */
public final class Belief {
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
        double[][] covariance = new double[sd.length][sd.length];
        for (int i = 0; i < sd.length; i++) covariance[i][i] = sd[i] * sd[i];
        learned(covariance, blueprint);
        return new Belief(new double[sd.length], covariance);
    }

    /** Lot and kit as batches taught them, or with the spread they usually have, on axes of logarithms. */
    private static void learned(double[][] covariance, Blueprint blueprint) {
        piecewright.belief.Belief all = blueprint.request().belief();
        Map<Doubt, Unknown> unknowns = unknowns(blueprint);
        unknowns.forEach(
                (doubt, unknown) -> unknowns.forEach((other, second) -> covariance[doubt.ordinal()][other.ordinal()] =
                        all.correlation(unknown, second) * logSd(all, unknown) * logSd(all, second)));
        double style = Math.log(ColourBand.ratioOf(blueprint.setup().style())) / Interval.TENTH_SD;
        double more = Math.max(0, style * style - Math.pow(Doubt.COLOUR.usualSd(), 2));
        covariance[Doubt.COLOUR.ordinal()][Doubt.COLOUR.ordinal()] += more;
    }

    private static double logSd(piecewright.belief.Belief all, Unknown unknown) {
        return unknown.trait().isLogarithmic() ? all.axisSd(unknown) : all.axisSd(unknown) / all.value(unknown);
    }

    private static Map<Doubt, Unknown> unknowns(Blueprint blueprint) {
        Setup setup = blueprint.setup();
        String lot = blueprint.request().lot().name();
        Map<Doubt, Unknown> unknowns = new EnumMap<>(Doubt.class);
        unknowns.put(Doubt.STEEP_RATE, new Unknown(Trait.STEEP_RATE, lot));
        unknowns.put(Doubt.SATURATION, new Unknown(Trait.SATURATION, lot));
        unknowns.put(Doubt.BURST, new Unknown(Trait.BURST, lot));
        unknowns.put(Doubt.GROWTH, new Unknown(Trait.GROWTH_RATE, lot));
        unknowns.put(Doubt.RESPIRATION, new Unknown(Trait.RESPIRATION, lot));
        unknowns.put(Doubt.KERNEL, new Unknown(Trait.KERNEL_RATE, lot));
        unknowns.put(Doubt.RAW_MOISTURE, new Unknown(Trait.RAW_MOISTURE, lot));
        Outfit outfit = setup.outfit();
        unknowns.put(
                Doubt.FLOOR_DRYING,
                new Unknown(Trait.FLOOR_DRYING, outfit.growing().place()));
        unknowns.put(
                Doubt.AIR_FLOW,
                new Unknown(Trait.AIR_FLOW, outfit.drying().dryer().name()));
        unknowns.put(
                Doubt.COLOUR, new Unknown(Trait.COLOUR_RATE, outfit.colours().name()));
        setup.couching().map(couching -> couching.box().name()).ifPresent(box -> {
            unknowns.put(Doubt.BOX_LOSS, new Unknown(Trait.BOX_LOSS, box));
            unknowns.put(Doubt.COUCH_HEAT, new Unknown(Trait.COUCH_HEAT, box));
        });
        return unknowns;
    }

    private static void byLot(double[] sd, GrainLot lot) {
        if (lot.size().floatersFraction().isPresent()) sd[Doubt.FLOATERS.ordinal()] = Priors.WEIGHED_LOSS_SD;
        lot.germinativeEnergyFraction()
                .ifPresent(share -> sd[Doubt.GERMINATION.ordinal()] = countedSd(share, corns(lot)));
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
