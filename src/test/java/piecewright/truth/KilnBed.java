package piecewright.truth;

import java.util.Arrays;
import piecewright.process.Psychrometrics;

/**
 * Twelve layers that air passes one after the other. Thin-layer rates of Sasaki and Kanzaki 1972 (k = 0.0727 exp(0.0788
 * ΔT − 0.00417 M0), ΔT the wet-bulb depression), equilibrium by the modified Henderson equation for barley (ASAE D245,
 * from memory).
 */
final class KilnBed {
    private static final int LAYERS = 12;
    private static final double PART_HOURS = 0.05;
    private static final double LATENT_KJ_PER_KG = 2450;
    private static final double WETTEST = 0.99;
    private static final double PA = Psychrometrics.STANDARD_PRESSURE_PA;

    private final double[] ratio = new double[LAYERS];
    private final double[] grainC = new double[LAYERS];
    private final double[] ebc = new double[LAYERS];
    private final double layerKg;
    private final double kernels;
    private final double substrate;
    private final double colour;
    private double hottestC;

    /** The air from below. */
    record Draught(double airOnC, double kgPerHour, double humidityRatio) {}

    KilnBed(double dryKg, double waterRatio, double warmC, double startEbc, double[] kernelsSubstrateColour) {
        this.layerKg = dryKg / LAYERS;
        this.kernels = kernelsSubstrateColour[0];
        this.substrate = kernelsSubstrateColour[1];
        this.colour = kernelsSubstrateColour[2];
        Arrays.fill(ratio, waterRatio);
        Arrays.fill(grainC, warmC);
        Arrays.fill(ebc, startEbc);
    }

    double waterRatio() {
        return mean(ratio);
    }

    double grainC() {
        return mean(grainC);
    }

    double hottestC() {
        return hottestC;
    }

    double ebc() {
        return mean(ebc);
    }

    private static double mean(double[] layers) {
        return Arrays.stream(layers).average().orElseThrow();
    }

    void stirred() {
        Arrays.fill(ratio, mean(ratio));
        Arrays.fill(grainC, mean(grainC));
        Arrays.fill(ebc, mean(ebc));
    }

    void blown(Draught draught, double hours) {
        int parts = Math.max(1, (int) Math.round(hours / PART_HOURS));
        for (int i = 0; i < parts; i++) blow(draught, hours / parts);
    }

    private void blow(Draught draught, double hours) {
        double wetBulbC = Psychrometrics.wetBulbC(draught.airOnC(), draught.humidityRatio(), PA);
        double airKg = draught.kgPerHour() * hours;
        double airC = draught.airOnC();
        double vapour = draught.humidityRatio();
        for (int i = 0; i < LAYERS; i++) {
            double humid = Math.min(WETTEST, Psychrometrics.relativeHumidityFraction(airC, vapour, PA));
            double perHour = kernels * 0.0727 * Math.exp(0.0788 * (airC - wetBulbC) - 0.00417 * 75);
            double wished = layerKg * Math.max(0, ratio[i] - equilibrium(airC, humid)) * -Math.expm1(-perHour * hours);
            double kg = carried(wished, i, new double[] {airKg, airC, vapour});
            double outC = leaving(kg, i, new double[] {airKg, airC, vapour});
            vapour += kg / airKg;
            ratio[i] -= kg / layerKg;
            double warmC = (grainC[i] + outC) / 2;
            ebc[i] = Browning.later(ebc[i], warmC, ratio[i] / (1 + ratio[i]), substrate * colour, hours);
            grainC[i] = outC;
            airC = outC;
        }
        hottestC = Math.max(hottestC, grainC[0]);
    }

    private double carried(double wishedKg, int layer, double[] air) {
        if (!saturates(wishedKg, layer, air)) return wishedKg;
        double low = 0;
        double high = wishedKg;
        for (int i = 0; i < 20; i++) {
            double middle = (low + high) / 2;
            if (saturates(middle, layer, air)) high = middle;
            else low = middle;
        }
        return low;
    }

    private boolean saturates(double kg, int layer, double[] air) {
        return air[2] + kg / air[0] > Psychrometrics.humidityRatio(leaving(kg, layer, air), WETTEST, PA);
    }

    /** Air and grain leave a layer at one temperature, heat kept. */
    private double leaving(double kg, int layer, double[] air) {
        double airKJPerK = air[0] * Psychrometrics.heatCapacityKJPerKgK(air[2]);
        double grainKJPerK = layerKg * (1.3 + 4.19 * ratio[layer]);
        return (airKJPerK * air[1] + grainKJPerK * grainC[layer] - kg * LATENT_KJ_PER_KG) / (airKJPerK + grainKJPerK);
    }

    private static double equilibrium(double airC, double humid) {
        double dry = -Math.log(1 - humid) / (2.2919e-5 * (airC + 195.267));
        return Math.pow(dry, 1 / 2.0123) / 100;
    }
}
