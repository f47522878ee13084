package piecewright.truth;

/**
 * A kernel that drinks: Fick's law in a sphere of 20 shells. 9.2e-4 radii² per hour at 15 °C gives the remembered table
 * of continuous steeping (32, 50 and 75 h to 40, 43 and 46 %); activation 40 kJ/mol, of the plausible 35 to 52.
 */
final class Sphere {
    private static final int SHELLS = 20;
    private static final double RADII2_PER_HOUR = 9.2e-4;
    private static final double ACTIVATION_J_PER_MOL = 40_000;
    /** Water per dry matter of a soaked surface. */
    private static final double SURFACE_RATIO = 0.97;

    private final double[] ratio = new double[SHELLS];
    private final double[] volume = new double[SHELLS];
    private final double speed;

    Sphere(double startRatio, double speed) {
        this.speed = speed;
        for (int i = 0; i < SHELLS; i++) {
            ratio[i] = startRatio;
            volume[i] = (Math.pow(i + 1, 3) - Math.pow(i, 3)) / Math.pow(SHELLS, 3);
        }
    }

    /** Water per dry matter. */
    double mean() {
        double sum = 0;
        for (int i = 0; i < SHELLS; i++) sum += ratio[i] * volume[i];
        return sum;
    }

    /** Drinks for some hours; wetness of the surface 1 under water, 0 sealed. */
    void drinks(double grainC, double hours, double wetness) {
        double warmth = Math.exp(-ACTIVATION_J_PER_MOL / 8.314 * (1 / (grainC + 273.15) - 1 / 288.15));
        double perHour = speed * RADII2_PER_HOUR * warmth;
        int parts = Math.max(1, (int) Math.ceil(hours * perHour * SHELLS * SHELLS * 4));
        for (int n = 0; n < parts; n++) diffuses(perHour, hours / parts, wetness);
    }

    private void diffuses(double perHour, double hours, double wetness) {
        double[] flow = new double[SHELLS + 1];
        for (int i = 1; i < SHELLS; i++) {
            double radius = (double) i / SHELLS;
            flow[i] = 3 * radius * radius * perHour * (ratio[i] - ratio[i - 1]) * SHELLS;
        }
        if (wetness > 0) {
            flow[SHELLS] = Math.max(0, 3 * perHour * (SURFACE_RATIO * wetness - ratio[SHELLS - 1]) * 2 * SHELLS);
        }
        for (int i = 0; i < SHELLS; i++) ratio[i] += hours * (flow[i + 1] - flow[i]) / volume[i];
    }
}
