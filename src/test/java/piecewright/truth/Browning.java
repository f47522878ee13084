package piecewright.truth;

/**
 * Colour by one Arrhenius law through two remembered cures and roasts: 0.28 EBC/h at 85 °C (3 h make 3 EBC of 2.0) and
 * 210 EBC/h at 150 °C (12 mm, 150 °C for 45 min: amber), 128 kJ/mol between them; wetter malt browns faster.
 */
final class Browning {
    private static final double MOST_EBC = 1600;

    private Browning() {}

    static double later(double ebc, double grainC, double moisture, double substrate, double hours) {
        double perHour = 0.28 * Math.exp(-128_300 / 8.314 * (1 / (grainC + 273.15) - 1 / 358.15));
        double wet = (1 + 10 * Math.min(0.10, Math.max(0.01, moisture))) / 1.4;
        return MOST_EBC - (MOST_EBC - ebc) * Math.exp(-substrate * wet * perHour * hours / MOST_EBC);
    }
}
