package piecewright.plan;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.process.GrainMass;
import piecewright.process.Metabolism;
import piecewright.process.PieceState;
import piecewright.process.SteepState;

/**
 * What was found of a piece at an instant: there the forecast gives way.
 *
 * @param netKg weight of the whole piece, kg
 * @param moistureFraction of a dried sample, wet basis
 * @param growth acrospires counted
 * @param chitted corns counted for the root tip
 * @param grainC temperature of the grain, °C
 */
public record Reading(
        Instant at,
        OptionalDouble netKg,
        OptionalDouble moistureFraction,
        Optional<Growth> growth,
        Optional<Chitted> chitted,
        OptionalDouble grainC) {
    /**
     * Judgement: dry matter lost is known to about two hundredths of what is left, so below this moisture a weight
     * cannot tell how much of it is water, wet basis.
     */
    public static final double TELLING_FRACTION = 0.05;
    /** Judgement: growth forecast before any count, standard deviation as a share of what has grown. */
    private static final double GROWTH_FORECAST_SD = 0.20;
    /** Judgement: no forecast of growth is surer than this, share of the corn. */
    private static final double LEAST_FORECAST_SD = 0.02;

    public Reading {
        Objects.requireNonNull(at);
        Objects.requireNonNull(netKg);
        Objects.requireNonNull(moistureFraction);
        Objects.requireNonNull(growth);
        Objects.requireNonNull(chitted);
        Objects.requireNonNull(grainC);
    }

    /** Mean acrospire and the standard deviation of that mean, shares of the corn. */
    public record Growth(double growthRatio, double growthSd) {}

    /** Nothing found: asks only how the piece stands then. */
    public static Reading nothing(Instant at) {
        OptionalDouble none = OptionalDouble.empty();
        return new Reading(at, none, none, Optional.empty(), Optional.empty(), none);
    }

    public Reading withNetKg(double changedKg) {
        return new Reading(at, OptionalDouble.of(changedKg), moistureFraction, growth, chitted, grainC);
    }

    public Reading withMoistureFraction(double changedFraction) {
        return new Reading(at, netKg, OptionalDouble.of(changedFraction), growth, chitted, grainC);
    }

    public Reading withGrowth(Growth changed) {
        return new Reading(at, netKg, moistureFraction, Optional.of(changed), chitted, grainC);
    }

    public Reading withChitted(Chitted changed) {
        return new Reading(at, netKg, moistureFraction, growth, Optional.of(changed), grainC);
    }

    public Reading withGrainC(double changedC) {
        return new Reading(at, netKg, moistureFraction, growth, chitted, OptionalDouble.of(changedC));
    }

    /** Whether a search may take up the piece here: it was weighed, or everything but the instant is as forecast. */
    boolean settles() {
        boolean nothing = growth.isEmpty() && chitted.isEmpty() && grainC.isEmpty();
        return weighs() || nothing;
    }

    /** Whether it says how much water there is. */
    public boolean weighs() {
        return netKg.isPresent() || moistureFraction.isPresent();
    }

    /** Water of a piece of so much dry matter, kg, 0 or more; empty where nothing tells it. */
    private OptionalDouble waterKg(GrainMass mass) {
        if (moistureFraction.isPresent()) {
            double fraction = moistureFraction.getAsDouble();
            return OptionalDouble.of(mass.dryMatterKg() * fraction / (1 - fraction));
        }
        if (netKg.isEmpty()) return OptionalDouble.empty();
        double weighedKg = netKg.getAsDouble() - mass.dryMatterKg();
        double leastKg = mass.dryMatterKg() * TELLING_FRACTION / (1 - TELLING_FRACTION);
        return OptionalDouble.of(weighedKg >= leastKg ? weighedKg : Math.min(mass.waterKg(), leastKg));
    }

    /**
     * The piece as it is held to be, given the forecast for this instant: weight and samples count in full, acrospires
     * by how well they were counted.
     *
     * @param fullestCoreRatio water the core holds at most, kg per kg of initial dry matter
     * @param lot how its corns chit
     */
    PieceState held(PieceState forecast, double fullestCoreRatio, Metabolism lot) {
        PieceState held = forecast;
        OptionalDouble water = waterKg(forecast.mass());
        if (water.isPresent()) held = watered(held, water.getAsDouble(), fullestCoreRatio);
        if (chitted.isPresent()) held = chitted.get().held(held, lot);
        if (growth.isPresent()) {
            double before = held.growth().growthRatio();
            double sd = Math.max(LEAST_FORECAST_SD, GROWTH_FORECAST_SD * before);
            double weight = sd * sd / (sd * sd + Math.pow(growth.get().growthSd(), 2));
            double now = before + weight * (growth.get().growthRatio() - before);
            held = held.withGrowth(held.growth().withGrowthRatio(now));
        }
        return grainC.isPresent() ? held.withGrainC(grainC.getAsDouble()) : held;
    }

    private static PieceState watered(PieceState state, double waterKg, double fullestCoreRatio) {
        GrainMass mass = state.mass();
        double moreRatio = (waterKg - mass.waterKg()) / mass.initialDryMatterKg();
        SteepState steep = state.steep();
        double core = Math.max(0, Math.min(fullestCoreRatio, steep.coreRatio() + moreRatio));
        return state.withMass(new GrainMass(mass.initialDryMatterKg(), mass.dryMatterKg(), waterKg))
                .withSteep(new SteepState(
                        core, steep.outerRatio(), steep.soakHours(), steep.waterChanges(), steep.chitRatio()));
    }
}
