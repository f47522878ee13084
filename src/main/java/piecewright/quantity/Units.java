package piecewright.quantity;

/** Conversions between the units people type and the ones used inside. Every factor is exact unless said. */
public final class Units {
    /** Source: international avoirdupois pound, 1959 agreement; exact. */
    public static final double KG_PER_POUND = 0.45359237;
    /** Source: one sixteenth of the avoirdupois pound; exact. */
    public static final double KG_PER_OUNCE = KG_PER_POUND / 16;
    /** Source: US liquid gallon, 231 cubic inches; exact. */
    public static final double L_PER_US_GALLON = 3.785411784;
    /** Source: EBC = 25·A430 and SRM = 12.7·A430 in a 1 cm cell (EBC and ASBC colour methods). */
    public static final double EBC_PER_SRM_RATIO = 25 / 12.7;
    /** Source: regression SRM = 1.3546·°L − 0.76 on EBC and °L published side by side by maltsters. */
    private static final double SRM_PER_LOVIBOND_RATIO = 1.3546;
    /** Source: the same regression, its intercept in SRM. */
    private static final double SRM_AT_ZERO_LOVIBOND_RATIO = -0.76;

    private Units() {}

    public static double celsiusOfFahrenheit(double fahrenheit) {
        return (fahrenheit - 32) / 1.8;
    }

    public static double fahrenheitOfCelsius(double temperatureC) {
        return temperatureC * 1.8 + 32;
    }

    /** A temperature difference: °F steps to K, with no offset. */
    public static double kelvinOfFahrenheitSteps(double fahrenheitSteps) {
        return fahrenheitSteps / 1.8;
    }

    public static double ebcOfSrm(double srm) {
        return srm * EBC_PER_SRM_RATIO;
    }

    public static double srmOfEbc(double colourEbc) {
        return colourEbc / EBC_PER_SRM_RATIO;
    }

    /** SRM of a malt of the given degrees Lovibond; below about 0.6 °L the regression would go negative: 0 there. */
    public static double srmOfLovibond(double lovibond) {
        return Math.max(0, SRM_PER_LOVIBOND_RATIO * lovibond + SRM_AT_ZERO_LOVIBOND_RATIO);
    }

    public static double lovibondOfSrm(double srm) {
        return (srm - SRM_AT_ZERO_LOVIBOND_RATIO) / SRM_PER_LOVIBOND_RATIO;
    }

    /** Degrees Lintner of a diastatic power in Windisch-Kolbach units; the usual rule (WK + 16) / 3.5. */
    public static double lintnerOfWindischKolbach(double windischKolbach) {
        return (windischKolbach + 16) / 3.5;
    }
}
