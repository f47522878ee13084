package piecewright.chart;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * Times along one axis.
 *
 * @param sizes rising
 * @param cpuMs time at each size, ms
 */
public record GrowthCurve(String along, double[] sizes, double[] cpuMs) {
    /** k of the nearest time ~ n^k. Steep where the smallest size leaves hardly any choice. */
    public double power() {
        return slope(Math::log, Math::log);
    }

    /** The nearest a + b·n·log n, ms. */
    double linearLogMs(double size) {
        double perStep = slope(GrowthCurve::linearLog, DoubleUnaryOperator.identity());
        double meanMs = Arrays.stream(cpuMs).average().orElseThrow();
        double mean = Arrays.stream(sizes).map(GrowthCurve::linearLog).average().orElseThrow();
        return meanMs + perStep * (linearLog(size) - mean);
    }

    /** What a step of size costs in the last stretch against the first; more than 1 where time bends upward. */
    public double bend() {
        int last = sizes.length - 1;
        return (cpuMs[last] - cpuMs[last - 1])
                / (sizes[last] - sizes[last - 1])
                / ((cpuMs[1] - cpuMs[0]) / (sizes[1] - sizes[0]));
    }

    /** The same of n·log n: a time that bends less grows no worse than linear × log. */
    public double bendOfLinearLog() {
        double[] made = Arrays.stream(sizes).map(GrowthCurve::linearLog).toArray();
        return new GrowthCurve(along, sizes, made).bend();
    }

    double mostMs() {
        return Arrays.stream(cpuMs).max().orElseThrow();
    }

    private static double linearLog(double size) {
        return size * Math.log(size);
    }

    private double slope(DoubleUnaryOperator across, DoubleUnaryOperator up) {
        double[] x = Arrays.stream(sizes).map(across).toArray();
        double[] y = Arrays.stream(cpuMs).map(up).toArray();
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double products = 0;
        double squares = 0;
        for (int i = 0; i < x.length; i++) {
            products += (x[i] - meanX) * (y[i] - meanY);
            squares += (x[i] - meanX) * (x[i] - meanX);
        }
        return products / squares;
    }
}
