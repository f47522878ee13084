package piecewright.bench;

import java.util.concurrent.TimeUnit;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import piecewright.process.Metabolism;
import piecewright.process.MetabolismParameters;
import piecewright.process.RungeKutta;

/**
 * Four days of a bed's warmth and growth under a daily wave of air: our fixed steps, of the reference's five minutes and
 * of the half hour in which bands are followed, each beside Hipparchus' adaptive integrator at the same error. Its
 * tolerance is loosened until its error is only just no worse; the errors, the worse of warmth and growth at the end as
 * a share of the figure, are printed first.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class IntegratorBenchmark {
    private static final double HOURS = 96;
    private static final double STEP_HOURS = 5.0 / 60;

    private final Metabolism alive = new Metabolism(0.97, 1, MetabolismParameters.defaults());
    private double[] truth;
    private double loose;
    private double tight;

    /** Finds the loosest tolerances at which the adaptive integrator is no worse than half-hours and five minutes. */
    @Setup
    public void equalError() {
        truth = adaptive(1e-13);
        tight = loosest("5 min", error(fixed(STEP_HOURS)));
        loose = loosest("30 min", error(fixed(6 * STEP_HOURS)));
    }

    private double loosest(String steps, double allowed) {
        double tried = 0.1;
        while (error(adaptive(tried)) > allowed) tried *= 0.95;
        System.out.printf(
                "steps of %s err by %.2e, adaptive with tolerance %.1e by %.2e%n",
                steps, allowed, tried, error(adaptive(tried)));
        return tried;
    }

    private double error(double[] end) {
        return Math.max(Math.abs(end[0] / truth[0] - 1), Math.abs(end[1] / truth[1] - 1));
    }

    private void slope(double atHours, double[] y, double[] slope) {
        double airC = 14 + 4 * Math.sin(2 * Math.PI * atHours / 24);
        slope[0] = 0.9 * alive.heatWPerKgDry(y[0], 0.44, y[1]) - 0.35 * (y[0] - airC);
        slope[1] = alive.growthPerHour(y[0], 0.44);
    }

    private double[] fixed(double stepHours) {
        double[] y = {14, 0.05};
        for (double at = 0; HOURS - at > 1e-9; at += stepHours) y = RungeKutta.step(y, at, stepHours, this::slope);
        return y;
    }

    private double[] adaptive(double allowed) {
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return 2;
            }

            @Override
            public double[] computeDerivatives(double at, double[] y) {
                double[] derivative = new double[2];
                slope(at, y, derivative);
                return derivative;
            }
        };
        return new DormandPrince853Integrator(1e-8, 12, allowed, allowed)
                .integrate(equation, new ODEState(0, new double[] {14, 0.05}), HOURS)
                .getPrimaryState();
    }

    @Benchmark
    public double[] fixedStepsOf5Minutes() {
        return fixed(STEP_HOURS);
    }

    @Benchmark
    public double[] fixedStepsOf30Minutes() {
        return fixed(6 * STEP_HOURS);
    }

    @Benchmark
    public double[] dormandPrince853AtTheErrorOf5Minutes() {
        return adaptive(tight);
    }

    @Benchmark
    public double[] dormandPrince853AtTheErrorOf30Minutes() {
        return adaptive(loose);
    }
}
