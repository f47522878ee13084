package piecewright.process.kiln;

import static piecewright.process.kiln.EquilibriumMoisture.CHUNG_PFOST_C_K;

import java.util.Objects;
import java.util.OptionalDouble;
import piecewright.process.Psychrometrics;

/**
 * A bed of grain with warm air through it, as one body: R = A (1 - exp(-K / A)), where A is the water the air can carry
 * and K what the kernels can give. Fitted to a bed of 15 layers within 5 % of its hours; moisture is the mean of a
 * turned bed, and an unturned deep bed is far from its mean. Heat to warm the grain is left out.
 */
public final class DryingBed {
    /**
     * Judgement: Newton stops once a step was shorter than this. Convergence is quadratic, so the temperature is then
     * good to 1e-6 K; a test holds it.
     */
    private static final double LAST_STEP_K = 1e-3;
    /** Judgement: colder than any air between grain; only brackets the solver. */
    private static final double COLDEST_C = -60;

    /** Judgement: one step of the hottest kiln begun above this share of the bound moisture ends above it. */
    private static final double NEARLY_BOUND_RATIO = 1.35;

    private final DryingParameters parameters;
    private final double lnWettestRatio;

    public DryingBed(DryingParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
        this.lnWettestRatio = Math.log(parameters.wettestFraction());
    }

    /**
     * Water leaving, kg per kg of dry matter and hour; 0 at or below equilibrium with the air-on.
     *
     * @param dryBasisRatio mean moisture, kg of water per kg of dry matter, 0 or more
     * @param dryMatterKg dry matter in the bed, kg, more than 0
     */
    public double dryingPerHour(double dryBasisRatio, double dryMatterKg, AirOn air) {
        double kernelKgPerHour = kernelKgPerHour(dryBasisRatio, dryMatterKg, air);
        if (kernelKgPerHour <= 0) return 0;
        double airKgPerHour = airKgPerHour(exhaustLimitC(dryBasisRatio, air), air);
        return airKgPerHour <= 0 ? 0 : dryingKgPerHour(airKgPerHour, kernelKgPerHour) / dryMatterKg;
    }

    /** The same with the temperatures and the exhaust; arguments as in {@link #dryingPerHour}. */
    public BedStep step(double dryBasisRatio, double dryMatterKg, AirOn air) {
        double kernelKgPerHour = kernelKgPerHour(dryBasisRatio, dryMatterKg, air);
        if (kernelKgPerHour <= 0) return atRest(air);
        double limitC = exhaustLimitC(dryBasisRatio, air);
        double airKgPerHour = airKgPerHour(limitC, air);
        if (airKgPerHour <= 0) return atRest(air);
        double transferRatio = kernelKgPerHour / airKgPerHour;
        double dryingKgPerHour = dryingKgPerHour(airKgPerHour, kernelKgPerHour);
        double spanK = air.airOnC() - limitC;
        return new BedStep(
                dryingKgPerHour / dryMatterKg,
                limitC + spanK * -Math.expm1(-transferRatio) / transferRatio,
                limitC + spanK * Math.exp(-transferRatio),
                air.humidityRatio() + dryingKgPerHour / air.dryAirKgPerHour());
    }

    /** Moisture below which this air dries no further, kg of water per kg of dry matter. */
    public double driestRatio(AirOn air) {
        double humidityFraction = Math.min(air.humidityFraction(), parameters.wettestFraction());
        return EquilibriumMoisture.dryBasisRatio(air.airOnC(), humidityFraction);
    }

    /** Rate constant of a thin layer, per hour: what is above equilibrium falls so fast until the last, bound water. */
    public double kernelPerHour(double airC) {
        double absoluteK = airC + Psychrometrics.ZERO_CELSIUS_K;
        return parameters.kernelRatio()
                * parameters.frequencyPerHour()
                * Math.exp(-parameters.activationK() / absoluteK);
    }

    /**
     * Hours in unchanging air from one moisture to a lower one; empty when this air never dries so far.
     *
     * @param fromRatio kg of water per kg of dry matter at the start
     * @param toRatio at the end, at most fromRatio
     */
    public OptionalDouble hoursToDry(double fromRatio, double toRatio, double dryMatterKg, AirOn air) {
        if (!(toRatio <= fromRatio)) {
            throw new IllegalArgumentException("toRatio must be at most fromRatio: " + toRatio + ", " + fromRatio);
        }
        double driestRatio = driestRatio(air);
        if (toRatio <= driestRatio) return OptionalDouble.empty();
        double lowLn = Math.log(toRatio - driestRatio);
        double spanLn = Math.log(fromRatio - driestRatio) - lowLn;
        int panels = 128;
        double sum = 0;
        for (int i = 0; i <= panels; i++) {
            double above = Math.exp(lowLn + spanLn * i / panels);
            double weight = i == 0 || i == panels ? 1 : i % 2 == 1 ? 4 : 2;
            sum += weight * above / dryingPerHour(driestRatio + above, dryMatterKg, air);
        }
        return OptionalDouble.of(sum * spanLn / panels / 3);
    }

    /** True from shortly above the moisture where the last water holds on. */
    boolean isBound(double dryBasisRatio) {
        return dryBasisRatio < NEARLY_BOUND_RATIO * parameters.bound().belowRatio();
    }

    private static BedStep atRest(AirOn air) {
        return new BedStep(0, air.airOnC(), air.airOnC(), air.humidityRatio());
    }

    private static double dryingKgPerHour(double airKgPerHour, double kernelKgPerHour) {
        return airKgPerHour * -Math.expm1(-kernelKgPerHour / airKgPerHour);
    }

    private double kernelKgPerHour(double dryBasisRatio, double dryMatterKg, AirOn air) {
        return kernelPerHour(air.airOnC())
                * parameters.bound().rateRatio(dryBasisRatio)
                * dryMatterKg
                * (dryBasisRatio - driestRatio(air));
    }

    private static double airKgPerHour(double limitC, AirOn air) {
        return air.dryAirKgPerHour() * (ratioOnLine(limitC, air.enthalpyKJPerKg()) - air.humidityRatio());
    }

    /** Humidity ratio of air of that temperature on the line of constant enthalpy. */
    private static double ratioOnLine(double temperatureC, double enthalpyKJPerKg) {
        return (enthalpyKJPerKg - Psychrometrics.DRY_AIR_KJ_PER_KG_K * temperatureC)
                / (Psychrometrics.VAPORISATION_KJ_PER_KG + Psychrometrics.VAPOUR_KJ_PER_KG_K * temperatureC);
    }

    /**
     * Where air cooling along its line of constant enthalpy is as moist as the grain keeps it, °C: the temperature of
     * the exhaust of an endless bed. Safeguarded Newton on the logarithm of vapour pressures; at most the air-on.
     */
    double exhaustLimitC(double dryBasisRatio, AirOn air) {
        double bindingK = EquilibriumMoisture.bindingK(dryBasisRatio);
        double enthalpyKJPerKg = air.enthalpyKJPerKg();
        double lnPressure = Math.log(air.pressurePa());
        double lowC = COLDEST_C;
        double highC = air.airOnC();
        double limitC = highC;
        for (int i = 0; i < 60; i++) {
            double line = ratioOnLine(limitC, enthalpyKJPerKg);
            double lnGrain = Math.min(lnWettestRatio, -bindingK / (limitC + CHUNG_PFOST_C_K));
            double lnAir = lnPressure + Math.log(line / (Psychrometrics.VAPOUR_MASS_RATIO + line));
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
        double line = -Psychrometrics.heatCapacityKJPerKgK(lineRatio)
                / (Psychrometrics.VAPORISATION_KJ_PER_KG + Psychrometrics.VAPOUR_KJ_PER_KG_K * limitC);
        double vapour = Psychrometrics.VAPOUR_MASS_RATIO;
        return grain
                + Psychrometrics.lnSaturationSlopePerK(limitC)
                - line * vapour / (lineRatio * (vapour + lineRatio));
    }
}
