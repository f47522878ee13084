package piecewright.process.kiln;

import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;

/** The same equations by Hipparchus' adaptive integrator. */
final class Adaptive {
    private Adaptive() {}

    static double[] integrated(HeatedGrain grain, double[] start, double fromHours, double untilHours) {
        OrdinaryDifferentialEquation equations = new OrdinaryDifferentialEquation() {
            @Override
            public int getDimension() {
                return HeatedGrain.SIZE;
            }

            @Override
            public double[] computeDerivatives(double atHours, double[] now) {
                double[] perHour = new double[HeatedGrain.SIZE];
                grain.rates(atHours, now, perHour);
                return perHour;
            }
        };
        return new DormandPrince853Integrator(1e-9, 1.0 / 24, 1e-9, 1e-9)
                .integrate(equations, new ODEState(fromHours, start), untilHours)
                .getPrimaryState();
    }
}
