package piecewright.learn;

import java.util.List;
import java.util.function.Function;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.ValueAndJacobianFunction;
import org.hipparchus.util.Pair;
import org.jspecify.annotations.Nullable;
import piecewright.belief.Values;

/** A prediction as the least squares see it: figures in standard errors, places in standard deviations of the prior. */
final class WhitenedModel {
    /** Judgement: slopes by differences over this many prior standard deviations; the models are smooth there. */
    private static final double STEP_SD = 0.01;

    private final Prediction prediction;
    private final List<Observation> observations;
    private final Function<RealVector, Values> values;
    private @Nullable Known known;

    /** The last point asked for: its value is wanted first, its slopes perhaps. */
    private record Known(RealVector point, Prediction.Seen seen) {}

    WhitenedModel(Prediction prediction, List<Observation> observations, Function<RealVector, Values> values) {
        this.prediction = prediction;
        this.observations = observations;
        this.values = values;
    }

    double[] figures(RealVector point) {
        return seen(point).figures();
    }

    /** Change of each observation, in its standard errors, per standard deviation of the prior along each place. */
    double[][] slopes(RealVector point) {
        Prediction.Seen here = seen(point);
        double[] figures = here.figures();
        double[][] slopes = new double[observations.size()][point.getDimension()];
        for (int j = 0; j < point.getDimension(); j++) {
            RealVector moved = point.copy();
            moved.addToEntry(j, STEP_SD);
            double[] there = here.with(values.apply(moved)).figures();
            for (int i = 0; i < there.length; i++) {
                slopes[i][j] = (whitened(i, there[i]) - whitened(i, figures[i])) / STEP_SD;
            }
        }
        return slopes;
    }

    /** The model with one residual more for each unknown, and none for what is not used. */
    ValueAndJacobianFunction using(boolean[] used) {
        return new ValueAndJacobianFunction() {
            @Override
            public RealVector computeValue(double[] point) {
                double[] figures = figures(new ArrayRealVector(point));
                double[] whitened = new double[figures.length + point.length];
                for (int i = 0; i < figures.length; i++) if (used[i]) whitened[i] = whitened(i, figures[i]);
                System.arraycopy(point, 0, whitened, figures.length, point.length);
                return new ArrayRealVector(whitened, false);
            }

            @Override
            public RealMatrix computeJacobian(double[] point) {
                double[][] slopes = slopes(new ArrayRealVector(point));
                double[][] rows = new double[slopes.length + point.length][point.length];
                for (int i = 0; i < slopes.length; i++) if (used[i]) rows[i] = slopes[i];
                for (int j = 0; j < point.length; j++) rows[slopes.length + j][j] = 1;
                return new Array2DRowRealMatrix(rows, false);
            }

            @Override
            public Pair<RealVector, RealMatrix> value(RealVector point) {
                double[] at = point.toArray();
                return new Pair<>(computeValue(at), computeJacobian(at));
            }
        };
    }

    private Prediction.Seen seen(RealVector point) {
        Known last = known;
        if (last != null && last.point().equals(point)) return last.seen();
        Prediction.Seen seen = prediction.at(values.apply(point));
        known = new Known(point.copy(), seen);
        return seen;
    }

    private double whitened(int i, double figure) {
        Observation observation = observations.get(i);
        return observation.figure().compared(figure) / observation.sd();
    }
}
