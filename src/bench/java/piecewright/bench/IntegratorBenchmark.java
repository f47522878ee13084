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
 * Four days of a bed's warmth and growth under a daily wave of air: our fixed steps beside Hipparchus' adaptive
 * integrator, its tolerance loosened as far as the error of our five minutes allows. The errors are printed first.
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
    private double tolerance;

    /** Finds the loosest tolerance at which the adaptive integrator is no worse than five-minute steps. */
    @Setup
    public void equalError() {
        double truth = adaptive(1e-13)[1];
        double fixed = Math.abs(fixed(STEP_HOURS)[1] - truth);
        tolerance = 1e-12;
        for (double tried = 1e-2; tried > 1e-12; tried /= 2) {
            if (Math.abs(adaptive(tried)[1] - truth) <= fixed) {
                tolerance = tried;
                break;
            }
        }
        System.out.printf(
                "error of growth: 5 min %.2e, 30 min %.2e, adaptive at %.0e %.2e%n",
                fixed, Math.abs(fixed(6 * STEP_HOURS)[1] - truth), tolerance, Math.abs(adaptive(tolerance)[1] - truth));
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
        return adaptive(tolerance);
    }
}
