package piecewright.process.kiln;

import static piecewright.process.kiln.EquilibriumMoisture.CHUNG_PFOST_C_K;

import piecewright.process.Psychrometrics;

/** A {@link DryingBed} while one air goes through it. Immutable; every method is some hundred nanoseconds. */
public final class BedInAir {
    /**
     * Judgement: Newton stops once a step was shorter than this. Convergence is quadratic, so the temperature is then
     * good to 2e-5 K; a test holds it.
     */
    private static final double LAST_STEP_K = 0.03;
    /** Judgement: colder than any air between grain; only brackets the solver. */
    private static final double COLDEST_C = -60;
    /** Judgement: one step of the hottest kiln begun above this share of the bound moisture ends above it. */
    private static final double NEARLY_BOUND_RATIO = 1.35;

    /** Judgement: from here on 1 − e^(−x) by itself is right to 1e-12. */
    private static final double TINY_RATIO = 1e-3;

    private final DryingParameters.Bound bound;
    private final AirOn air;
    private final double kernelPerHour;
    private final double driestRatio;
    private final double lnWettestRatio;
    private final double lnPressurePa;
    private final double enthalpyKJPerKg;

    BedInAir(DryingParameters parameters, AirOn air, double kernelPerHour) {
        this.bound = parameters.bound();
        this.air = air;
        this.kernelPerHour = kernelPerHour;
        double humidityFraction = Math.min(air.humidityFraction(), parameters.wettestFraction());
        this.driestRatio = EquilibriumMoisture.dryBasisRatio(air.airOnC(), humidityFraction);
        this.lnWettestRatio = Math.log(parameters.wettestFraction());
        this.lnPressurePa = Math.log(air.pressurePa());
        this.enthalpyKJPerKg = air.enthalpyKJPerKg();
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
        return airKgPerHour <= 0 ? 0 : dryingKgPerHour(airKgPerHour, kernelKgPerHour) / dryMatterKg;
    }

    /** As {@link DryingBed#step}. */
    public BedStep step(double dryBasisRatio, double dryMatterKg) {
        double kernelKgPerHour = kernelKgPerHour(dryBasisRatio, dryMatterKg);
        if (kernelKgPerHour <= 0) return atRest();
        double limitC = exhaustLimitC(dryBasisRatio);
        double airKgPerHour = airKgPerHour(limitC);
        if (airKgPerHour <= 0) return atRest();
        double transferRatio = kernelKgPerHour / airKgPerHour;
        double dryingKgPerHour = dryingKgPerHour(airKgPerHour, kernelKgPerHour);
        double spanK = air.airOnC() - limitC;
        return new BedStep(
                dryingKgPerHour / dryMatterKg,
                limitC + spanK * dryingKgPerHour / kernelKgPerHour,
                limitC + spanK * Math.exp(-transferRatio),
                air.humidityRatio() + dryingKgPerHour / air.dryAirKgPerHour());
    }

    /** True from shortly above the moisture where the last water holds on. */
    boolean isBound(double dryBasisRatio) {
        return dryBasisRatio < NEARLY_BOUND_RATIO * bound.belowRatio();
    }

    /**
     * Where air cooling along its line of constant enthalpy is as moist as the grain keeps it, °C: the temperature of
     * the exhaust of an endless bed. Safeguarded Newton on the logarithm of vapour pressures; at most the air-on.
     */
    double exhaustLimitC(double dryBasisRatio) {
        double bindingK = EquilibriumMoisture.bindingK(dryBasisRatio);
        double lowC = COLDEST_C;
        double highC = air.airOnC();
        double limitC = highC;
        for (int i = 0; i < 60; i++) {
            double line = ratioOnLine(limitC);
            double lnGrain = Math.min(lnWettestRatio, -bindingK / (limitC + CHUNG_PFOST_C_K));
            double lnAir = lnPressurePa + Math.log(line / (Psychrometrics.VAPOUR_MASS_RATIO + line));
            double excess = lnGrain + Psychrometrics.lnSaturationPressure(limitC) - lnAir;
            if (excess <= 0 && i == 0) return highC;
            if (excess > 0) highC = limitC;
            else lowC = limitC;
            double next = limitC - excess / slopePerK(limitC, line, bindingK);
            if (!(next > lowC && next < highC)) next = (lowC + highC) / 2;
            double stepK = Math.abs(next - limitC);
            limitC = next;
            if (stepK < LAST_STEP_K) break;
        }
        return limitC;
    }

    private double slopePerK(double limitC, double lineRatio, double bindingK) {
        double sorbedK = limitC + CHUNG_PFOST_C_K;
        double grain = -bindingK / sorbedK < lnWettestRatio ? bindingK / (sorbedK * sorbedK) : 0;
        double line = -Psychrometrics.heatCapacityKJPerKgK(lineRatio) / vapourKJPerKg(limitC);
        double vapour = Psychrometrics.VAPOUR_MASS_RATIO;
        return grain
                + Psychrometrics.lnSaturationSlopePerK(limitC)
                - line * vapour / (lineRatio * (vapour + lineRatio));
    }

    private BedStep atRest() {
        return new BedStep(0, air.airOnC(), air.airOnC(), air.humidityRatio());
    }

    /** R = A (1 − e^(−K/A)); the exponential alone is several times as fast and, but for tiny K, as exact. */
    private static double dryingKgPerHour(double airKgPerHour, double kernelKgPerHour) {
        double ratio = kernelKgPerHour / airKgPerHour;
        return airKgPerHour * (ratio > TINY_RATIO ? 1 - Math.exp(-ratio) : -Math.expm1(-ratio));
    }

    private double kernelKgPerHour(double dryBasisRatio, double dryMatterKg) {
        return kernelPerHour * bound.rateRatio(dryBasisRatio) * dryMatterKg * (dryBasisRatio - driestRatio);
    }

    private double airKgPerHour(double limitC) {
        return air.dryAirKgPerHour() * (ratioOnLine(limitC) - air.humidityRatio());
    }

    /** Humidity ratio of air of that temperature on the line of constant enthalpy. */
    private double ratioOnLine(double temperatureC) {
        return (enthalpyKJPerKg - Psychrometrics.DRY_AIR_KJ_PER_KG_K * temperatureC) / vapourKJPerKg(temperatureC);
    }

    private static double vapourKJPerKg(double temperatureC) {
        return Psychrometrics.VAPORISATION_KJ_PER_KG + Psychrometrics.VAPOUR_KJ_PER_KG_K * temperatureC;
    }
}
