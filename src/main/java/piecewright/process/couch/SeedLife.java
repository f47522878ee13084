package piecewright.process.couch;

import piecewright.process.LogNormal;

/**
 * How long corns outlive the heat of a couch: lives end normally distributed in time, so viability in probits falls by
 * one every σ(moisture, temperature). What it leaves out: moist living corns mend themselves where it is cooler, and a
 * slow rise hardens them; so it counts only the hot hours, and may kill some corns too soon.
 */
public final class SeedLife {
    /** Source: Ellis and Roberts 1980, Ann. Bot.; barley, constants as tabulated by Dickie 1990: K_E. */
    private static final double LOG_DAYS = 9.144;
    /** Source: the same: C_W, per decade of moisture in percent. */
    private static final double PER_MOISTURE_DECADE = 5.342;
    /** Source: the same: C_H, per °C. */
    private static final double PER_DEGREE = 0.0329;
    /** Source: the same: C_Q, per °C squared. */
    private static final double PER_SQUARE_DEGREE = 0.000478;
    /** Source: the same: the law holds up to here; wetter corns are taken as this wet, wet basis. */
    private static final double WETTEST_FRACTION = 0.246;
    /** Judgement: below this wet living corns mend what they lose; imbibed barley does not germinate at 45 °C. */
    private static final double HARMS_FROM_C = 40;
    /** Judgement: no lot is surer than that, share of corns. */
    private static final double SUREST_FRACTION = 0.999;

    private SeedLife() {}

    /** σ: hours in which viability falls by one probit, at this moisture, wet basis, and temperature, °C. */
    public static double hoursPerProbit(double moistureFraction, double grainC) {
        double percent = 100 * Math.min(WETTEST_FRACTION, moistureFraction);
        double daysLog = LOG_DAYS
                - PER_MOISTURE_DECADE * Math.log10(percent)
                - PER_DEGREE * grainC
                - PER_SQUARE_DEGREE * grainC * grainC;
        return 24 * Math.pow(10, daysLog);
    }

    /**
     * Share of all corns still alive at the end of a couch.
     *
     * @param aliveFraction share alive as it was packed, [0, 1]
     * @param moistureFraction of the pile, wet basis, more than 0
     */
    public static double aliveFraction(double aliveFraction, CouchCurve couch, double moistureFraction) {
        if (aliveFraction <= 0) return 0;
        double lostProbits = 0;
        for (int i = 1; i < couch.points().size(); i++) {
            CouchCurve.Point before = couch.points().get(i - 1);
            CouchCurve.Point after = couch.points().get(i);
            double pileC = (before.pileC() + after.pileC()) / 2;
            double hours = after.atHours() - before.atHours();
            if (pileC >= HARMS_FROM_C) lostProbits += hours / hoursPerProbit(moistureFraction, pileC);
        }
        return lostProbits == 0 ? aliveFraction : LogNormal.normalShareBelow(probits(aliveFraction) - lostProbits);
    }

    /** The number of standard deviations under which so large a share of a normal population lies. */
    private static double probits(double fraction) {
        double wanted = Math.min(SUREST_FRACTION, fraction);
        double low = -4;
        double high = 4;
        for (int i = 0; i < 50; i++) {
            double middle = (low + high) / 2;
            if (LogNormal.normalShareBelow(middle) < wanted) low = middle;
            else high = middle;
        }
        return high;
    }
}
