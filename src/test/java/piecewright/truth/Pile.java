package piecewright.truth;

/**
 * A hot couch: a core and a rind of equal mass joined by 1.2 W/K, the rind alone losing heat through the box, oxygen
 * limiting both, Q / (1 + Q / 51 W). 1.7 W/kg at 20 °C, Q10 2.3, cut off at 50.9 °C, dying by 5.7 % an hour at 50 °C.
 */
final class Pile {
    private static final double PART_HOURS = 1.0 / 30;
    private final double[] pileC;
    private final double[] able = {1, 1};
    private final double lossWPerK;
    private final double heat;
    private double index;
    private double hottestC;

    Pile(double grainC, double lossWPerK, double heat) {
        this.pileC = new double[] {grainC, grainC};
        this.lossWPerK = lossWPerK;
        this.heat = heat;
    }

    double meanC() {
        return (pileC[0] + pileC[1]) / 2;
    }

    double hottestC() {
        return hottestC;
    }

    /** Equivalent hours at 48 °C and 40 %: doubling in 10 K, drier grain less. */
    double index() {
        return index;
    }

    void turned() {
        double mean = meanC() - 0.5;
        pileC[0] = mean;
        pileC[1] = mean;
    }

    /** Heats itself for some hours; dry matter respired, kg. */
    double heats(double dryKg, double waterRatio, double airC, double hours) {
        int parts = Math.max(1, (int) Math.round(hours / PART_HOURS));
        double respired = 0;
        for (int i = 0; i < parts; i++) respired += part(dryKg, waterRatio, airC, hours / parts);
        return respired;
    }

    private double part(double dryKg, double waterRatio, double airC, double hours) {
        double moisture = 100 * waterRatio / (1 + waterRatio);
        double halfKJPerK = (dryKg * (1.3 + 4.19 * waterRatio) + 3) / 2;
        double[] watts = new double[2];
        for (int i = 0; i < 2; i++) {
            double wet = wet(moisture) / wet(40);
            double cut = 1 + Math.exp(pileC[i] - 50.9);
            watts[i] = heat * 1.7 * dryKg / 2 * wet * able[i] * Math.pow(2.3, (pileC[i] - 20) / 10) / cut;
            able[i] *= Math.exp(-hours * 0.057 * Math.pow(10, (pileC[i] - 50) / 5.2));
        }
        double allowed = 1 / (1 + (watts[0] + watts[1]) / 51);
        double joined = 1.2 * (pileC[0] - pileC[1]);
        double steam = 1.5 * Math.max(0, (pressure(pileC[1]) - 1.1) / (pressure(50) - 1.1));
        pileC[0] += 3.6 * hours * (watts[0] * allowed - joined) / halfKJPerK;
        pileC[1] += 3.6 * hours * (watts[1] * allowed + joined - lossWPerK * (pileC[1] - airC) - steam) / halfKJPerK;
        hottestC = Math.max(hottestC, meanC());
        double warmC = meanC();
        if (warmC >= 30 && warmC <= 54) {
            double share = Math.min(1.1, Math.max(0, (moisture - 20) / 20));
            index += hours * Math.pow(2, (warmC - 48) / 10) * share;
        }
        return hours * allowed * (watts[0] + watts[1]) * 3.6 / 15_600;
    }

    private static double wet(double moisture) {
        return 1 / (1 + Math.exp(-(moisture - 25.8) / 4.5));
    }

    private static double pressure(double grainC) {
        return 0.61094 * Math.exp(17.625 * grainC / (grainC + 243.04));
    }
}
