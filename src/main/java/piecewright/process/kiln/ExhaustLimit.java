package piecewright.process.kiln;

import static piecewright.process.kiln.EquilibriumMoisture.CHUNG_PFOST_C_K;

import piecewright.process.Psychrometrics;

/**
 * Where air cooling along its line of constant enthalpy is as moist as the grain keeps it: the temperature of the
 * exhaust of an endless bed. Read from the {@link ExhaustTable} where that answers, solved for elsewhere.
 *
 * @param enthalpyKJPerKg of the air, kJ per kg of dry air
 * @param pressurePa of the air, Pa, more than 0
 * @param wettestFraction relative humidity at which air leaves wet grain, (0, 1]
 */
record ExhaustLimit(double enthalpyKJPerKg, double pressurePa, double wettestFraction) {
    /**
     * Judgement: Newton may stop once a step was shorter than this. Convergence is quadratic, so the temperature is then
     * good to 2e-5 K; a test holds it.
     */
    static final double LAST_STEP_K = 0.03;
    /** Judgement: colder than any air between grain; only brackets the solver. */
    private static final double COLDEST_C = -60;

    /** The limit for grain of that moisture, °C; at most the air-on. */
    double limitC(double dryBasisRatio, double airOnC) {
        boolean tabled =
                pressurePa == Psychrometrics.STANDARD_PRESSURE_PA && wettestFraction == ExhaustTable.WETTEST_FRACTION;
        double tabledC = tabled ? ExhaustTable.limitC(enthalpyKJPerKg, dryBasisRatio) : Double.NaN;
        return tabledC == tabledC
                ? Math.min(tabledC, airOnC)
                : solvedC(EquilibriumMoisture.bindingK(dryBasisRatio), airOnC, LAST_STEP_K);
    }

    /**
     * The same by safeguarded Newton on the logarithm of vapour pressures.
     *
     * @param bindingK what the moisture makes of {@link EquilibriumMoisture#bindingK}; 0 for grain as wet as can be
     * @param lastStepK a step shorter than this is the last, K, above 0
     */
    double solvedC(double bindingK, double airOnC, double lastStepK) {
        double lnPressurePa = Math.log(pressurePa);
        double lnWettestRatio = Math.log(wettestFraction);
        double lowC = COLDEST_C;
        double highC = airOnC;
        double limitC = highC;
        for (int i = 0; i < 60; i++) {
            double line = ratioOnLine(limitC);
            double lnGrain = Math.min(lnWettestRatio, -bindingK / (limitC + CHUNG_PFOST_C_K));
            double lnAir = lnPressurePa + Math.log(line / (Psychrometrics.VAPOUR_MASS_RATIO + line));
            double excess = lnGrain + Psychrometrics.lnSaturationPressure(limitC) - lnAir;
            if (excess <= 0 && i == 0) return highC;
            if (excess > 0) highC = limitC;
            else lowC = limitC;
            double next = limitC - excess / slopePerK(limitC, line, lnGrain == lnWettestRatio ? 0 : bindingK);
            if (!(next > lowC && next < highC)) next = (lowC + highC) / 2;
            double stepK = Math.abs(next - limitC);
            limitC = next;
            if (stepK < lastStepK) break;
        }
        return limitC;
    }

    private static double slopePerK(double limitC, double lineRatio, double bindingK) {
        double sorbedK = limitC + CHUNG_PFOST_C_K;
        double line = -Psychrometrics.heatCapacityKJPerKgK(lineRatio) / vapourKJPerKg(limitC);
        double vapour = Psychrometrics.VAPOUR_MASS_RATIO;
        return bindingK / (sorbedK * sorbedK)
                + Psychrometrics.lnSaturationSlopePerK(limitC)
                - line * vapour / (lineRatio * (vapour + lineRatio));
    }

    /** Humidity ratio of air of that temperature on the line of constant enthalpy. */
    double ratioOnLine(double temperatureC) {
        return (enthalpyKJPerKg - Psychrometrics.DRY_AIR_KJ_PER_KG_K * temperatureC) / vapourKJPerKg(temperatureC);
    }

    private static double vapourKJPerKg(double temperatureC) {
        return Psychrometrics.VAPORISATION_KJ_PER_KG + Psychrometrics.VAPOUR_KJ_PER_KG_K * temperatureC;
    }
}
