package piecewright.process;

/** The classical fourth-order Runge–Kutta step, fixed length, for a handful of coupled unknowns. */
public final class RungeKutta {
    private RungeKutta() {}

    /** Right-hand side of dy/dt = f(t, y). */
    public interface Slope {
        /** Writes dy/dt at atHours and y into slope, per hour. */
        void at(double atHours, double[] y, double[] slope);
    }

    /** y at atHours + stepHours as a new array; y is left alone. */
    public static double[] step(double[] y, double atHours, double stepHours, Slope slope) {
        int size = y.length;
        double half = stepHours / 2;
        double[] k1 = new double[size];
        double[] k2 = new double[size];
        double[] k3 = new double[size];
        double[] k4 = new double[size];
        double[] probe = new double[size];
        slope.at(atHours, y, k1);
        for (int i = 0; i < size; i++) probe[i] = y[i] + half * k1[i];
        slope.at(atHours + half, probe, k2);
        for (int i = 0; i < size; i++) probe[i] = y[i] + half * k2[i];
        slope.at(atHours + half, probe, k3);
        for (int i = 0; i < size; i++) probe[i] = y[i] + stepHours * k3[i];
        slope.at(atHours + stepHours, probe, k4);
        for (int i = 0; i < size; i++) probe[i] = y[i] + stepHours / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        return probe;
    }
}
