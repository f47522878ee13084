package piecewright.ensemble;

import piecewright.plan.Setup;
import piecewright.process.GrainMass;
import piecewright.process.GrowthState;
import piecewright.process.PieceState;
import piecewright.process.Stage;
import piecewright.process.SteepState;
import piecewright.process.Surroundings;
import piecewright.process.steep.Bath;
import piecewright.process.steep.Standing;
import piecewright.process.steep.Wetting;

/**
 * Another account of the steep: each corn a sphere that water diffuses into (Fick, in 20 shells), wetted through a
 * husk that fills at once; chitting by a Q10 law, and only in moist corns. The diffusivity, 9.2e-4 radii² per hour at
 * 15 °C, reproduces the remembered table of continuous steeping (32, 50 and 75 h to 40, 43 and 46 %) through F = 6√(Dt/π)
 * − 3Dt; activation 40 kJ/mol, inside the plausible 35 to 52. Holds the profile of one truth: use in time order.
 */
final class SphereSteep {
    private static final int SHELLS = 20;
    private static final double RADII2_PER_HOUR = 9.2e-4;
    private static final double ACTIVATION_J_PER_MOL = 40_000;
    private static final double HUSK_RATIO = 0.13;
    private static final double FILM_RATIO = 0.05;
    private static final double SURFACE_RATIO = 0.97;
    private static final double CHIT_HOURS_AT_15 = 36;
    private static final double CHIT_PER_K = 0.085;

    private final double[] ratio = new double[SHELLS];
    private final double[] volume = new double[SHELLS];
    private final double speed;
    private final double surface;
    private final double outerFull;
    private final Setup actual;
    private final Member member;

    SphereSteep(Setup actual, Member member) {
        this.actual = actual;
        this.member = member;
        this.speed = actual.models().steep().rateRatio();
        this.surface = SURFACE_RATIO * member.ratio(Doubt.SATURATION);
        this.outerFull = HUSK_RATIO * member.ratio(Doubt.BURST) + FILM_RATIO * member.ratio(Doubt.FILM);
        for (int i = 0; i < SHELLS; i++) {
            ratio[i] = actual.lot().moistureRatio();
            volume[i] = (Math.pow(i + 1, 3) - Math.pow(i, 3)) / Math.pow(SHELLS, 3);
        }
    }

    Stage immersion(int number) {
        Bath bath = new Bath(actual.fillC(), actual.outfit().soaking().waterL(number));
        return new Soak(bath);
    }

    Stage rest() {
        return new Rest();
    }

    /** Core water after so many hours under water of one temperature. */
    double soaked(double waterC, double hours) {
        diffuse(waterC, hours, 1);
        return mean();
    }

    private double mean() {
        double sum = 0;
        for (int i = 0; i < SHELLS; i++) sum += ratio[i] * volume[i];
        return sum;
    }

    /** Diffuses for some hours with the surface held at a share of its full wetness; 0 seals it. */
    private void diffuse(double grainC, double hours, double wetness) {
        double perHour = speed
                * RADII2_PER_HOUR
                * Math.exp(-ACTIVATION_J_PER_MOL / 8.314 * (1 / (grainC + 273.15) - 1 / 288.15));
        int parts = Math.max(1, (int) Math.ceil(hours * perHour * SHELLS * SHELLS * 4));
        double part = hours / parts;
        for (int n = 0; n < parts; n++) {
            double[] flow = new double[SHELLS + 1];
            for (int i = 1; i < SHELLS; i++) {
                double radius = (double) i / SHELLS;
                flow[i] = 3 * radius * radius * perHour * (ratio[i] - ratio[i - 1]) * SHELLS;
            }
            if (wetness > 0) {
                flow[SHELLS] = Math.max(0, 3 * perHour * (surface * wetness - ratio[SHELLS - 1]) * 2 * SHELLS);
            }
            for (int i = 0; i < SHELLS; i++) ratio[i] += part * (flow[i + 1] - flow[i]) / volume[i];
        }
    }

    private double chitPerHour(double grainC, double moistureFraction) {
        if (moistureFraction < 0.30) return 0;
        return member.ratio(Doubt.CHIT) / CHIT_HOURS_AT_15 * Math.exp(CHIT_PER_K * (Math.min(grainC, 25) - 15));
    }

    private double hoursTowardsAir(double volumeL, Standing standing) {
        return actual.models().steep().parameters().warming().hours(standing, volumeL);
    }

    /** The state with the profile's water, some dry matter lost, warmer by the air. */
    private PieceState later(PieceState start, double outer, double grainC, double hours, double lostFraction) {
        GrainMass mass = start.mass();
        SteepState was = start.steep();
        double drunk = mean() + outer - was.coreRatio() - was.outerRatio();
        double lost = lostFraction * mass.dryMatterKg();
        double moisture = mass.moisture().wetBasisFraction();
        double chit = was.chitRatio() + hours * chitPerHour(grainC, moisture);
        boolean grows = chit >= 1;
        var metabolism = actual.models().metabolism();
        GrowthState growth = start.growth();
        return start.withMass(new GrainMass(
                        mass.initialDryMatterKg(),
                        mass.dryMatterKg() - lost,
                        mass.waterKg() + drunk * mass.initialDryMatterKg()))
                .withSteep(new SteepState(mean(), outer, was.soakHours() + hours, was.waterChanges(), chit))
                .withGrowth(
                        grows
                                ? new GrowthState(
                                        growth.growthRatio() + hours * metabolism.growthPerHour(grainC, moisture),
                                        growth.rootletDays() + hours * metabolism.rootletDaysPerHour(grainC))
                                : growth)
                .withGrainC(grainC);
    }

    private final class Soak implements Stage {
        private final Bath bath;

        Soak(Bath bath) {
            this.bath = bath;
        }

        @Override
        public PieceState entered(PieceState before) {
            double grainC = Wetting.mixedC(before.mass(), before.grainC(), bath);
            return later(before, Math.max(before.steep().outerRatio(), outerFull), grainC, 0, 0.001);
        }

        @Override
        public PieceState step(PieceState start, double atHours, double stepHours) {
            Surroundings air = actual.air().steep();
            double tau = hoursTowardsAir(bath.waterL() + Wetting.grainL(start.mass()), Standing.BUCKET);
            double airC = air.airC(atHours + stepHours / 2);
            double grainC = airC + (start.grainC() - airC) * Math.exp(-stepHours / tau);
            diffuse((grainC + start.grainC()) / 2, stepHours, 1);
            return later(start, start.steep().outerRatio(), grainC, stepHours, 0.0004 * stepHours);
        }
    }

    private final class Rest implements Stage {
        @Override
        public PieceState step(PieceState start, double atHours, double stepHours) {
            double tau = hoursTowardsAir(Wetting.grainL(start.mass()), actual.restStanding());
            double airC = actual.air().steep().airC(atHours + stepHours / 2);
            double grainC = airC + (start.grainC() - airC) * Math.exp(-stepHours / tau);
            double before = mean();
            double outer = start.steep().outerRatio();
            diffuse((grainC + start.grainC()) / 2, stepHours, outer / outerFull);
            double left = Math.max(0, outer - (mean() - before));
            return later(start, left, grainC, stepHours, 0.0002 * stepHours);
        }
    }
}
