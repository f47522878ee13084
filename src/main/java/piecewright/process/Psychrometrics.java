package piecewright.process;

/**
 * Moist air: saturation, humidity ratio, wet bulb, dew point, enthalpy, volume. Not the state of any one place, only
 * the relations. Formulas of the ASHRAE Fundamentals handbook, chapter "Psychrometrics", SI. Humidity ratio is kg of
 * vapour per kg of dry air, enthalpy kJ per kg of dry air from dry air and liquid water at 0 °C.
 */
public final class Psychrometrics {
    /** Source: standard atmosphere at sea level (ISO 2533), exact. */
    public static final double STANDARD_PRESSURE_PA = 101325;
    /** Source: ASHRAE Fundamentals, Psychrometrics: molar mass of water over that of dry air. */
    public static final double VAPOUR_MASS_RATIO = 0.621945;
    /** Source: definition of the Celsius scale, exact. */
    public static final double ZERO_CELSIUS_K = 273.15;
    /** Source: ASHRAE Fundamentals, Psychrometrics: heat capacity of dry air. */
    public static final double DRY_AIR_KJ_PER_KG_K = 1.006;
    /** Source: ASHRAE Fundamentals, Psychrometrics: heat capacity of water vapour. */
    public static final double VAPOUR_KJ_PER_KG_K = 1.86;
    /** Source: ASHRAE Fundamentals, Psychrometrics: enthalpy of saturated vapour at 0 °C. */
    public static final double VAPORISATION_KJ_PER_KG = 2501;
    /** Judgement: bracketing solvers stop here; far finer than any thermometer. */
    private static final double SOLVED_TO_K = 1e-7;

    private Psychrometrics() {}

    /**
     * Pressure of vapour in equilibrium with water, below 0 °C with ice, Pa.
     *
     * @param temperatureC [-100, 200] °C
     * @throws IllegalArgumentException outside that range
     */
    public static double saturationPressurePa(double temperatureC) {
        return Math.exp(lnSaturationPressure(temperatureC));
    }

    /** Natural logarithm of {@link #saturationPressurePa} in Pa: what solvers want. */
    public static double lnSaturationPressure(double temperatureC) {
        if (!(temperatureC >= -100 && temperatureC <= 200)) {
            throw new IllegalArgumentException("temperatureC must be in [-100, 200]: " + temperatureC);
        }
        double t = temperatureC + ZERO_CELSIUS_K;
        if (temperatureC < 0) {
            return -5.6745359e3 / t
                    + 6.3925247
                    + t * (-9.677843e-3 + t * (6.2215701e-7 + t * (2.0747825e-9 - 9.484024e-13 * t)))
                    + 4.1635019 * Math.log(t);
        }
        return -5.8002206e3 / t
                + 1.3914993
                + t * (-4.8640239e-2 + t * (4.1764768e-5 - 1.4452093e-8 * t))
                + 6.5459673 * Math.log(t);
    }

    /** How fast {@link #lnSaturationPressure} rises, per K; over water at all temperatures. */
    public static double lnSaturationSlopePerK(double temperatureC) {
        double t = temperatureC + ZERO_CELSIUS_K;
        return 5.8002206e3 / (t * t) - 4.8640239e-2 + t * (2 * 4.1764768e-5 - 3 * 1.4452093e-8 * t) + 6.5459673 / t;
    }

    /**
     * kg of vapour per kg of dry air.
     *
     * @param humidityFraction relative humidity, [0, 1]
     * @param pressurePa pressure of the air, Pa, more than that of the vapour
     */
    public static double humidityRatio(double temperatureC, double humidityFraction, double pressurePa) {
        if (!(humidityFraction >= 0 && humidityFraction <= 1)) {
            throw new IllegalArgumentException("humidityFraction must be in [0, 1]: " + humidityFraction);
        }
        double vapourPa = humidityFraction * saturationPressurePa(temperatureC);
        if (!(vapourPa < pressurePa)) {
            throw new IllegalArgumentException("pressurePa must exceed the vapour's: " + pressurePa + ", " + vapourPa);
        }
        return VAPOUR_MASS_RATIO * vapourPa / (pressurePa - vapourPa);
    }

    /** Pressure of the vapour in air of that humidity ratio, Pa. */
    public static double vapourPressurePa(double humidityRatio, double pressurePa) {
        return pressurePa * humidityRatio / (VAPOUR_MASS_RATIO + humidityRatio);
    }

    /** Relative humidity of air of that humidity ratio, share of one; above 1 where it would fog. */
    public static double relativeHumidityFraction(double temperatureC, double humidityRatio, double pressurePa) {
        return vapourPressurePa(humidityRatio, pressurePa) / saturationPressurePa(temperatureC);
    }

    /** Enthalpy, kJ per kg of dry air. */
    public static double enthalpyKJPerKg(double temperatureC, double humidityRatio) {
        return DRY_AIR_KJ_PER_KG_K * temperatureC
                + humidityRatio * (VAPORISATION_KJ_PER_KG + VAPOUR_KJ_PER_KG_K * temperatureC);
    }

    /** Heat capacity of moist air, kJ per K and kg of dry air. */
    public static double heatCapacityKJPerKgK(double humidityRatio) {
        return DRY_AIR_KJ_PER_KG_K + VAPOUR_KJ_PER_KG_K * humidityRatio;
    }

    /** Volume of moist air, m³ per kg of dry air. */
    public static double specificVolumeM3PerKg(double temperatureC, double humidityRatio, double pressurePa) {
        return 287.042 * (temperatureC + ZERO_CELSIUS_K) * (1 + 1.607858 * humidityRatio) / pressurePa;
    }

    /** Pressure of the standard atmosphere at an altitude, Pa; altitudeM in [-500, 11000] m. */
    public static double pressurePaAtAltitude(double altitudeM) {
        if (!(altitudeM >= -500 && altitudeM <= 11000)) {
            throw new IllegalArgumentException("altitudeM must be in [-500, 11000]: " + altitudeM);
        }
        return STANDARD_PRESSURE_PA * Math.pow(1 - 2.25577e-5 * altitudeM, 5.2559);
    }

    /** How much more vapour the air could hold, kPa: saturation pressure times (1 - relative humidity). */
    public static double vapourPressureDeficitKPa(double airC, double humidityFraction) {
        return saturationPressurePa(airC) * (1 - humidityFraction) / 1000;
    }

    /**
     * Temperature a ventilated wet thermometer settles at, °C, at most the air's. Full relation, not the line of
     * constant enthalpy.
     *
     * @param humidityRatio 0 or more, at most saturation at temperatureC
     */
    public static double wetBulbC(double temperatureC, double humidityRatio, double pressurePa) {
        double lowC = -100;
        double highC = temperatureC;
        while (highC - lowC > SOLVED_TO_K) {
            double middleC = (lowC + highC) / 2;
            if (ratioAtWetBulb(temperatureC, middleC, pressurePa) > humidityRatio) highC = middleC;
            else lowC = middleC;
        }
        return (lowC + highC) / 2;
    }

    /** Humidity ratio of air whose dry and wet bulbs show these, kg per kg of dry air. */
    public static double ratioAtWetBulb(double temperatureC, double wetBulbC, double pressurePa) {
        double vapourPa = saturationPressurePa(wetBulbC);
        if (vapourPa >= pressurePa) return Double.POSITIVE_INFINITY;
        double saturated = VAPOUR_MASS_RATIO * vapourPa / (pressurePa - vapourPa);
        double depressionK = temperatureC - wetBulbC;
        if (wetBulbC < 0) {
            return ((2830 - 0.24 * wetBulbC) * saturated - DRY_AIR_KJ_PER_KG_K * depressionK)
                    / (2830 + VAPOUR_KJ_PER_KG_K * temperatureC - 2.1 * wetBulbC);
        }
        return ((VAPORISATION_KJ_PER_KG - 2.326 * wetBulbC) * saturated - DRY_AIR_KJ_PER_KG_K * depressionK)
                / (VAPORISATION_KJ_PER_KG + VAPOUR_KJ_PER_KG_K * temperatureC - 4.186 * wetBulbC);
    }

    /** Temperature at which air of this humidity ratio begins to fog, °C; humidityRatio more than 0. */
    public static double dewPointC(double humidityRatio, double pressurePa) {
        if (!(humidityRatio > 0)) throw new IllegalArgumentException("humidityRatio must be above 0: " + humidityRatio);
        double lnVapour = Math.log(vapourPressurePa(humidityRatio, pressurePa));
        double lowC = -100;
        double highC = 200;
        while (highC - lowC > SOLVED_TO_K) {
            double middleC = (lowC + highC) / 2;
            if (lnSaturationPressure(middleC) > lnVapour) highC = middleC;
            else lowC = middleC;
        }
        return (lowC + highC) / 2;
    }
}
