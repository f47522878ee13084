package piecewright.process;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** An independent, adaptive integrator to hold the stages against. */
public final class Adaptive {
    private Adaptive() {}

    /** y at untilHours from y at fromHours. */
    public static double[] solved(double[] y, double fromHours, double untilHours, RungeKutta.Slope slope) {
        OrdinaryDifferentialEquation equation = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return y.length;
            }

            @Override
            public double[] computeDerivatives(double t, double[] now) {
                double[] derivative = new double[now.length];
                slope.at(t, now, derivative);
                return derivative;
            }
        };
        DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-8, 0.05, 1e-10, 1e-10);
        return integrator
                .integrate(equation, new ODEState(fromHours, y), untilHours)
                .getPrimaryState();
    }
}
