package piecewright.process.kiln;

import piecewright.process.Psychrometrics;

/** A {@link DryingBed} while one air goes through it. Immutable; every method takes some tens of nanoseconds. */
public final class BedInAir {
    /** Judgement: one step of the hottest kiln begun above this share of the bound moisture ends above it. */
    private static final double NEARLY_BOUND_RATIO = 1.35;
    /** Judgement: from here on 1 − e^(−x) by itself is right to 1e-12. */
    private static final double TINY_RATIO = 1e-3;

    private final DryingParameters.Bound bound;
    private final AirOn air;
    private final double kernelPerHour;
    private final double driestRatio;
    private final ExhaustLimit limit;

    /** What the temperature of the air-on decides, the same in any room: the kernels' rate and saturation. */
    record Heat(double airOnC, double kernelPerHour, double saturationPressurePa) {}

    /** The air's temperature must be that of heat. */
    BedInAir(DryingParameters parameters, AirOn air, Heat heat) {
        this.bound = parameters.bound();
        this.air = air;
        this.kernelPerHour = heat.kernelPerHour();
        double vapourPa = Psychrometrics.vapourPressurePa(air.humidityRatio(), air.pressurePa());
        double humidityFraction = Math.min(vapourPa / heat.saturationPressurePa(), parameters.wettestFraction());
        this.driestRatio = EquilibriumMoisture.dryBasisRatio(air.airOnC(), humidityFraction);
        this.limit = new ExhaustLimit(air.enthalpyKJPerKg(), air.pressurePa(), parameters.wettestFraction());
    }

    public AirOn air() {
        return air;
    }

    /** Moisture below which this air dries no further, kg of water per kg of dry matter. */
    public double driestRatio() {
        return driestRatio;
    }

    /** As {@link DryingBed#dryingPerHour}. */
    public double dryingPerHour(double dryBasisRatio, double dryMatterKg) {
        double kernelKgPerHour = kernelKgPerHour(dryBasisRatio, dryMatterKg);
        if (kernelKgPerHour <= 0) return 0;
        double airKgPerHour = airKgPerHour(exhaustLimitC(dryBasisRatio));
        if (airKgPerHour <= 0) return 0;
        double ratio = kernelKgPerHour / airKgPerHour;
        return airKgPerHour * takenRatio(ratio, Math.exp(-ratio)) / dryMatterKg;
    }

    /** As {@link DryingBed#step}. */
    public BedStep step(double dryBasisRatio, double dryMatterKg) {
        double kernelKgPerHour = kernelKgPerHour(dryBasisRatio, dryMatterKg);
        if (kernelKgPerHour <= 0) return atRest();
        double limitC = exhaustLimitC(dryBasisRatio);
        double airKgPerHour = airKgPerHour(limitC);
        if (airKgPerHour <= 0) return atRest();
        double transferRatio = kernelKgPerHour / airKgPerHour;
        double leftRatio = Math.exp(-transferRatio);
        double dryingKgPerHour = airKgPerHour * takenRatio(transferRatio, leftRatio);
        double spanK = air.airOnC() - limitC;
        return new BedStep(
                dryingKgPerHour / dryMatterKg,
                limitC + spanK * dryingKgPerHour / kernelKgPerHour,
                limitC + spanK * leftRatio,
                air.humidityRatio() + dryingKgPerHour / air.dryAirKgPerHour());
    }

    /**
     * At most how fast the drying rate itself falls from that moisture on, per hour: what an integrator's step must be
     * short against. Counted only from shortly above the moisture where the last water holds on; 0 before.
     */
    double stiffnessPerHour(double dryBasisRatio) {
        if (dryBasisRatio >= NEARLY_BOUND_RATIO * bound.belowRatio()) return 0;
        return kernelPerHour * bound.rateRatio(dryBasisRatio) * (1 + bound.steepnessRatio());
    }

    /** Where this air ends in an endless bed, °C; at most the air-on. */
    double exhaustLimitC(double dryBasisRatio) {
        return limit.limitC(dryBasisRatio, air.airOnC());
    }

    private BedStep atRest() {
        return new BedStep(0, air.airOnC(), air.airOnC(), air.humidityRatio());
    }

    /** 1 − e^(−x); the difference is several times as fast as expm1 and, but for tiny x, as exact. */
    private static double takenRatio(double ratio, double leftRatio) {
        return ratio > TINY_RATIO ? 1 - leftRatio : -Math.expm1(-ratio);
    }

    private double kernelKgPerHour(double dryBasisRatio, double dryMatterKg) {
        return kernelPerHour * bound.rateRatio(dryBasisRatio) * dryMatterKg * (dryBasisRatio - driestRatio);
    }

    private double airKgPerHour(double limitC) {
        return air.dryAirKgPerHour() * (limit.ratioOnLine(limitC) - air.humidityRatio());
    }
}
