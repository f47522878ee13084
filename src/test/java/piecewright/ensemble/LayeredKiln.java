package piecewright.ensemble;

import java.util.Arrays;
import piecewright.house.Heater.HotAir;
import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.KilnState;
import piecewright.process.PieceState;
import piecewright.process.Psychrometrics;
import piecewright.process.Stage;
import piecewright.process.Surroundings;
import piecewright.process.kiln.AirOn;
import piecewright.process.kiln.ColourKinetics;

/**
 * Another account of the kiln: fifteen layers that air passes one after the other, each with its own moisture, warmth
 * and colour. Thin-layer rates of Sasaki and Kanzaki 1972 (k = 0.0727 exp(0.0788 ΔT − 0.00417 M0), ΔT the wet-bulb
 * depression), equilibrium by the modified Henderson equation for barley (ASAE D245, from memory), heat capacity of the
 * grain counted, exhaust never beyond saturation. Holds the layers of one truth: use in time order.
 */
final class LayeredKiln {
    private static final int LAYERS = 15;
    private static final double PART_HOURS = 0.05;
    private static final double HENDERSON_PER_K = 2.2919e-5;
    private static final double HENDERSON_POWER = 2.0123;
    private static final double HENDERSON_K = 195.267;
    private static final double LATENT_KJ_PER_KG = 2450;
    private static final double WETTEST_FRACTION = 0.99;

    private final Setup actual;
    private final double kernelRatio;
    private final double[] ratio = new double[LAYERS];
    private final double[] grainC = new double[LAYERS];
    private final double[] colourEbc = new double[LAYERS];
    private double couchIndexHours;

    LayeredKiln(Setup actual, Member member) {
        this.actual = actual;
        this.kernelRatio = member.ratio(Doubt.KERNEL);
    }

    /** Evens out the bed. */
    void load(PieceState loaded) {
        couchIndexHours = loaded.couch().indexHours();
        Arrays.fill(ratio, loaded.mass().dryBasisRatio());
        Arrays.fill(grainC, loaded.grainC());
        Arrays.fill(colourEbc, loaded.kiln().colourEbc());
    }

    void stir() {
        Arrays.fill(ratio, mean(ratio));
        Arrays.fill(grainC, mean(grainC));
        Arrays.fill(colourEbc, mean(colourEbc));
    }

    Stage drying(int rung) {
        return new Heat(
                actual.dryingC(rung),
                actual.outfit().drying().dryer().air(),
                actual.air().dryer());
    }

    Stage curing() {
        return new Heat(
                actual.outfit().drying().cureC(),
                actual.outfit().drying().curingAir(),
                actual.air().curer());
    }

    private static double mean(double[] layers) {
        return Arrays.stream(layers).average().orElseThrow();
    }

    private final class Heat implements Stage {
        private final double setC;
        private final HotAir heater;
        private final Surroundings room;
        private final ColourKinetics kinetics =
                new ColourKinetics(actual.models().kiln().colour());

        Heat(double setC, HotAir heater, Surroundings room) {
            this.setC = setC;
            this.heater = heater;
            this.room = room;
        }

        @Override
        public PieceState step(PieceState start, double atHours, double stepHours) {
            int parts = Math.max(1, (int) Math.round(stepHours / PART_HOURS));
            for (int i = 0; i < parts; i++) {
                blow(start.mass().dryMatterKg() / LAYERS, atHours, stepHours / parts);
            }
            GrainMass mass = start.mass();
            KilnState was = start.kiln();
            return start.withMass(new GrainMass(
                            mass.initialDryMatterKg(), mass.dryMatterKg(), mass.dryMatterKg() * mean(ratio)))
                    .withKiln(new KilnState(mean(colourEbc), was.diastaticFraction(), was.smmFraction()))
                    .withGrainC(mean(grainC));
        }

        private void blow(double layerKg, double atHours, double hours) {
            AirOn air = AirOn.of(setC, heater.airFlowM3PerHour(), room.airC(atHours), room.humidityFraction());
            double wetBulbC = Psychrometrics.wetBulbC(air.airOnC(), air.humidityRatio(), air.pressurePa());
            double airKg = air.dryAirKgPerHour() * hours;
            double airC = air.airOnC();
            double vapour = air.humidityRatio();
            for (int i = 0; i < LAYERS; i++) {
                double humidity = Math.min(
                        WETTEST_FRACTION, Psychrometrics.relativeHumidityFraction(airC, vapour, air.pressurePa()));
                double perHour = kernelRatio * 0.0727 * Math.exp(0.0788 * (airC - wetBulbC) - 0.00417 * 75);
                double above = Math.max(0, ratio[i] - equilibrium(airC, humidity));
                double wishedKg = layerKg * above * -Math.expm1(-perHour * hours);
                double kg = carried(wishedKg, i, layerKg, new double[] {airKg, airC, vapour});
                double outC = leaving(kg, i, layerKg, new double[] {airKg, airC, vapour});
                vapour += kg / airKg;
                ratio[i] -= kg / layerKg;
                colour(i, (grainC[i] + outC) / 2, hours);
                grainC[i] = outC;
                airC = outC;
            }
        }

        /** As much of the wish as the air can carry away unsaturated. */
        private double carried(double wishedKg, int layer, double layerKg, double[] air) {
            if (!saturates(wishedKg, layer, layerKg, air)) return wishedKg;
            double low = 0;
            double high = wishedKg;
            for (int i = 0; i < 25; i++) {
                double middle = (low + high) / 2;
                if (saturates(middle, layer, layerKg, air)) high = middle;
                else low = middle;
            }
            return low;
        }

        private boolean saturates(double kg, int layer, double layerKg, double[] air) {
            double outC = leaving(kg, layer, layerKg, air);
            double saturated =
                    Psychrometrics.humidityRatio(outC, WETTEST_FRACTION, Psychrometrics.STANDARD_PRESSURE_PA);
            return air[2] + kg / air[0] > saturated;
        }

        /** Air and grain leave a layer at one temperature, heat kept. */
        private double leaving(double kg, int layer, double layerKg, double[] air) {
            double airKJPerK = air[0] * Psychrometrics.heatCapacityKJPerKgK(air[2]);
            double grainKJPerK = layerKg * (1.3 + 4.19 * ratio[layer]);
            return (airKJPerK * air[1] + grainKJPerK * grainC[layer] - kg * LATENT_KJ_PER_KG)
                    / (airKJPerK + grainKJPerK);
        }

        private void colour(int layer, double warmC, double hours) {
            double wet = ratio[layer] / (1 + ratio[layer]);
            double substrate = kinetics.couchedSubstrateRatio(
                    actual.style().kiln().colourBase().substrateRatio(), couchIndexHours);
            colourEbc[layer] = kinetics.isothermalEbc(colourEbc[layer], warmC, wet, substrate, hours);
        }
    }

    /** Modified Henderson: 1 − RH = exp(−K (T + C) (100 X)^N). */
    static double equilibrium(double airC, double humidityFraction) {
        double dry = -Math.log(1 - humidityFraction) / (HENDERSON_PER_K * (airC + HENDERSON_K));
        return Math.pow(dry, 1 / HENDERSON_POWER) / 100;
    }
}
