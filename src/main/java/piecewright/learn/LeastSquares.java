package piecewright.learn;

import java.util.List;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import piecewright.belief.Belief;
import piecewright.belief.Values;

/**
 * Levenberg–Marquardt in standard deviations of the prior: positions are prior + L·u with L·Lᵀ the prior's covariance,
 * so the prior is one residual u per unknown, and every residual counts in standard errors.
 */
final class LeastSquares {
    /** Judgement: the sum of squares is known well enough; unknowns then move by a fiftieth of their error at most. */
    private static final double COST_TOLERANCE_RATIO = 1e-5;
    /** Judgement: likewise the unknowns, in standard deviations of the prior. */
    private static final double PLACE_TOLERANCE_RATIO = 1e-4;
    /** Judgement: beyond the prior by so much nothing is believed; keeps a wild first step inside the models. */
    private static final double FARTHEST_SD = 6;
    /** Judgement: pivots below count as nothing; only rounding makes them. */
    private static final double SYMMETRY_RATIO = 1e-9;
    /** Judgement: the same, for variances. */
    private static final double LEAST_PIVOT_RATIO = 1e-14;

    private static final int MOST_EVALUATIONS = 200;

    private final Belief prior;
    private final Prediction prediction;
    private final List<Observation> observations;
    private final RealMatrix spread;

    LeastSquares(Belief prior, Prediction prediction, List<Observation> observations) {
        this.prior = prior;
        this.prediction = prediction;
        this.observations = observations;
        this.spread = cholesky(new Array2DRowRealMatrix(prior.covariance())).getL();
    }

    /**
     * The fit.
     *
     * @param figures foretold at the most probable values
     * @param figureSds what the posterior leaves open of each figure, on the axis of its error
     */
    record Solution(Belief posterior, double[] figures, double[] figureSds) {}

    /** The most probable values given the observations that are used; the others are only foretold. */
    Solution solved(boolean[] used) {
        int size = prior.unknowns().size();
        double[] target = new double[observations.size() + size];
        for (int i = 0; i < observations.size(); i++) {
            Observation observation = observations.get(i);
            if (used[i]) target[i] = observation.figure().compared(observation.value()) / observation.sd();
        }
        WhitenedModel model = new WhitenedModel(prediction, observations, this::values);
        RealVector best = new LevenbergMarquardtOptimizer()
                .withCostRelativeTolerance(COST_TOLERANCE_RATIO)
                .withParameterRelativeTolerance(PLACE_TOLERANCE_RATIO)
                .optimize(new LeastSquaresBuilder()
                        .start(new double[size])
                        .target(target)
                        .model(model.using(used))
                        .parameterValidator(LeastSquares::held)
                        .lazyEvaluation(true)
                        .maxEvaluations(MOST_EVALUATIONS)
                        .maxIterations(MOST_EVALUATIONS)
                        .build())
                .getPoint();
        return solution(best, model, used);
    }

    private static RealVector held(RealVector point) {
        return point.map(u -> Math.max(-FARTHEST_SD, Math.min(FARTHEST_SD, u)));
    }

    private Solution solution(RealVector best, WhitenedModel model, boolean[] used) {
        double[][] slopes = model.slopes(best);
        int size = best.getDimension();
        RealMatrix information = new Array2DRowRealMatrix(size, size);
        for (int j = 0; j < size; j++) information.setEntry(j, j, 1);
        for (int i = 0; i < slopes.length; i++) {
            RealVector slope = new ArrayRealVector(slopes[i], false);
            if (used[i]) information = information.add(slope.outerProduct(slope));
        }
        RealMatrix inverse = cholesky(information).getSolver().getInverse();
        RealMatrix covariance = spread.multiply(inverse).multiplyTransposed(spread);
        double[] sds = new double[slopes.length];
        for (int i = 0; i < sds.length; i++) {
            RealVector slope = new ArrayRealVector(slopes[i], false);
            sds[i] = observations.get(i).sd() * Math.sqrt(Math.max(0, slope.dotProduct(inverse.operate(slope))));
        }
        Belief posterior = new Belief(prior.unknowns(), position(best), symmetric(covariance.getData()));
        return new Solution(posterior, model.figures(best), sds);
    }

    private static CholeskyDecomposition cholesky(RealMatrix positive) {
        return new CholeskyDecomposition(positive, SYMMETRY_RATIO, LEAST_PIVOT_RATIO);
    }

    private static double[][] symmetric(double[][] nearly) {
        for (int i = 0; i < nearly.length; i++) for (int j = 0; j < i; j++) nearly[i][j] = nearly[j][i];
        return nearly;
    }

    private Values values(RealVector point) {
        return prior.valuesAt(position(point));
    }

    private double[] position(RealVector point) {
        return spread.operate(point)
                .add(new ArrayRealVector(prior.positions(), false))
                .toArray();
    }
}
