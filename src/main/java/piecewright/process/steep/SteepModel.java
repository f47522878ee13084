package piecewright.process.steep;

import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/**
 * How one lot drinks: an outer layer that fills at once, a core that follows by second order. Ratios are kg of water
 * per kg of dry matter as steeped. Holds for 5 to 25 °C, starting at 9 to 16 % moisture, up to 49 %.
 */
public final class SteepModel {
    /** Judgement: chitted enough to drink faster, a little before half the corns show it. */
    public static final double CHITTED_AT_RATIO = 0.85;
    /** Source: CODATA 2018, molar gas constant; exact. */
    private static final double GAS_J_PER_MOL_K = 8.314462618;
    /** Source: 15 °C in kelvin; the reference of the rate. */
    private static final double REFERENCE_K = 288.15;
    /** Judgement: usual weight of 1000 barley corns, g, that the default rate stands for. */
    private static final double REFERENCE_THOUSAND_CORN_G = 42;
    /** Judgement: diffusion goes with surface over volume squared (Becker 1960), hence weight to the −2/3. */
    private static final double SIZE_EXPONENT_RATIO = 2.0 / 3;
    /** Judgement: slowest lot believed. */
    private static final double SLOWEST_RATIO = 0.4;
    /** Judgement: fastest lot believed. */
    private static final double FASTEST_RATIO = 3;

    private final double rateRatio;
    private final double startChitRatio;
    private final SteepParameters parameters;
    private final SteepParameters.Uptake uptake;

    /**
     * @param rateRatio lot multiplier m of the uptake rate, above 0
     * @param startChitRatio χ at first wetting, 0 or less
     */
    public SteepModel(double rateRatio, double startChitRatio, SteepParameters parameters) {
        if (!(rateRatio > 0)) throw new IllegalArgumentException("rateRatio must be above 0: " + rateRatio);
        if (!(startChitRatio <= 0)) {
            throw new IllegalArgumentException("startChitRatio must be 0 or less: " + startChitRatio);
        }
        this.rateRatio = rateRatio;
        this.startChitRatio = startChitRatio;
        this.parameters = Objects.requireNonNull(parameters);
        this.uptake = parameters.uptake();
    }

    /** A lot as it is known: what it taught, otherwise the grain's usual rate corrected by the size of the corns. */
    public static SteepModel of(GrainLot lot, SteepParameters parameters) {
        SteepParameters.Uptake uptake = parameters.uptake();
        uptake = uptake.withSaturationRatio(lot.learned().saturationRatio().orElse(uptake.saturationRatio()));
        uptake = uptake.withBurstRatio(lot.learned().burstRatio().orElse(uptake.burstRatio()));
        double rateRatio = lot.learned().steepRateRatio().orElseGet(() -> usualRateRatio(lot));
        return new SteepModel(
                rateRatio,
                WaterSensitivity.startChitRatio(lot.waterSensitivityFraction()),
                parameters.withUptake(uptake));
    }

    public SteepParameters parameters() {
        return parameters;
    }

    /** The lot multiplier m. */
    public double rateRatio() {
        return rateRatio;
    }

    /** χ at first wetting: 0, or negative for a water-sensitive lot, which chits later. */
    public double startChitRatio() {
        return startChitRatio;
    }

    /** θ: rate at a temperature as a multiple of the rate at 15 °C. */
    public double theta(double waterC) {
        return Math.exp(-uptake.activationJPerMol() / GAS_J_PER_MOL_K * (1 / (waterC + 273.15) - 1 / REFERENCE_K));
    }

    /** True once the lot drinks faster for having chitted. */
    public static boolean chitted(double chitRatio) {
        return chitRatio >= CHITTED_AT_RATIO;
    }

    /** 1, or 1 + g once chitted. */
    public double chitGain(double chitRatio) {
        return chitted(chitRatio) ? 1 + uptake.chitGainRatio() : 1;
    }

    /** Ws: water in husk, embryo and film as soon as the grain is under water. */
    public double filledOuterRatio() {
        return uptake.burstRatio() + uptake.filmRatio();
    }

    /** Ce: water the core holds in the end. */
    public double saturationCoreRatio() {
        return uptake.saturationRatio() - uptake.burstRatio();
    }

    /**
     * Core water after some time under water, exact.
     *
     * @param equivalentHours ∫θ·(1 + g·chitted) dt, hours as if at 15 °C and unchitted, 0 or more
     */
    public double coreAfterSoak(double coreRatio, double equivalentHours) {
        double lackRatio = saturationCoreRatio() - coreRatio;
        if (lackRatio <= 0) return coreRatio;
        return saturationCoreRatio() - lackRatio / (1 + lackRatio * rateRatio * uptake.ratePerHour() * equivalentHours);
    }

    /** Water that moves from outer layer to core in an air rest, kg/kg per hour. */
    public double restPerHour(double coreRatio, double outerRatio, double grainC, double chitRatio) {
        return restPerHour(coreRatio, outerRatio, theta(grainC) * chitGain(chitRatio));
    }

    /** The same with θ·(1 + g·chitted) already known. */
    public double restPerHour(double coreRatio, double outerRatio, double equivalentPerHour) {
        double lackRatio = Math.max(0, saturationCoreRatio() - coreRatio);
        return rateRatio
                * uptake.ratePerHour()
                * equivalentPerHour
                * lackRatio
                * lackRatio
                * Math.max(0, outerRatio)
                / filledOuterRatio();
    }

    /**
     * Hours of one more soak until drained grain holds a target.
     *
     * @param targetRatio core and outer water wanted
     * @return 0 when a dip of some minutes does; infinite when the lot never gets there
     */
    public double soakHoursTo(double targetRatio, double coreRatio, double waterC, double chitRatio) {
        double targetCoreRatio = targetRatio - filledOuterRatio();
        if (targetCoreRatio <= coreRatio) return 0;
        double lackRatio = saturationCoreRatio() - targetCoreRatio;
        if (lackRatio <= 0) return Double.POSITIVE_INFINITY;
        return (1 / lackRatio - 1 / (saturationCoreRatio() - coreRatio))
                / (rateRatio * uptake.ratePerHour() * theta(waterC) * chitGain(chitRatio));
    }

    /** The same to a drained moisture, with the dry matter and the water of respiration the piece has now. */
    public double soakHoursTo(Moisture target, PieceState state, double waterC) {
        return soakHoursTo(
                drainedRatio(target, state),
                state.steep().coreRatio(),
                waterC,
                state.steep().chitRatio());
    }

    /** Core and outer water at which a scale would show that moisture, dry matter lost and water formed allowed for. */
    public static double drainedRatio(Moisture moisture, PieceState state) {
        double initialKg = state.mass().initialDryMatterKg();
        double drunkKg = (state.steep().coreRatio() + state.steep().outerRatio()) * initialKg;
        double formedKg = state.mass().waterKg() - drunkKg;
        return (moisture.dryBasisRatio() * state.mass().dryMatterKg() - formedKg) / initialKg;
    }

    /** The lot multiplier that one test soak tells; equivalentHours is ∫θ dt under water, above 0. */
    public double rateRatioOfTestSoak(double startRatio, double drainedRatio, double equivalentHours) {
        double lackRatio = saturationCoreRatio() - (drainedRatio - filledOuterRatio());
        return (1 / lackRatio - 1 / (saturationCoreRatio() - startRatio)) / (uptake.ratePerHour() * equivalentHours);
    }

    /** Share of the dry matter as steeped that has been washed out. */
    public double leachedFraction(double soakHours, int waterChanges) {
        SteepParameters.Leaching leaching = parameters.leaching();
        return leaching.soakFraction() * -Math.expm1(-soakHours / leaching.soakHours())
                + leaching.changeFraction() * waterChanges;
    }

    private static double usualRateRatio(GrainLot lot) {
        OptionalDouble corn = lot.size().thousandCornG();
        boolean barley = lot.kind() == GrainKind.BARLEY || lot.kind() == GrainKind.HULLLESS_BARLEY;
        double sizeRatio = barley && corn.isPresent()
                ? Math.pow(REFERENCE_THOUSAND_CORN_G / corn.getAsDouble(), SIZE_EXPONENT_RATIO)
                : 1;
        double rateRatio = GrainRates.usualRateRatio(lot.kind()) * sizeRatio;
        return Math.max(SLOWEST_RATIO, Math.min(FASTEST_RATIO, rateRatio));
    }
}
