package piecewright.plan.search;

import java.util.function.DoubleUnaryOperator;

/** A smooth function of temperature, tabulated so that it costs no exponential: linear between eighths of a kelvin. */
final class ByTemperature {
    /** Judgement: colder than any grain in water. */
    private static final double LOWEST_C = -20;
    /** Judgement: warmer than any. */
    private static final double HIGHEST_C = 60;

    private static final int POINTS_PER_K = 8;

    private final double[] values = new double[(int) (HIGHEST_C - LOWEST_C) * POINTS_PER_K + 2];

    ByTemperature(DoubleUnaryOperator function) {
        for (int i = 0; i < values.length; i++) {
            values[i] = function.applyAsDouble(LOWEST_C + i / (double) POINTS_PER_K);
        }
    }

    /** The value at a temperature, °C; outside −20 to 60 the value at the nearer end. */
    double at(double temperatureC) {
        double position = Math.max(0, Math.min(values.length - 2, (temperatureC - LOWEST_C) * POINTS_PER_K));
        int below = (int) position;
        return values[below] + (position - below) * (values[below + 1] - values[below]);
    }
}
