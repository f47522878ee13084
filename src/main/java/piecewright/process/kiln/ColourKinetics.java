package piecewright.process.kiln;

import java.util.Objects;

/**
 * Colour formed by heat: dC/dt = S e^(b (M - 4)) k(T) (1 - C / most), M held to 1..10 wet-basis percent. Fitted to
 * schedules whose colour is known; read kilned colours to a factor of 1.3, roasts 1.7, crystal 1.8, couched malt 2.
 */
public final class ColourKinetics {
    /** Judgement: moisture at which the rates are quoted, wet-basis percent. */
    private static final double REFERENCE_PERCENT = 4;
    /** Judgement: the fit has no drier row. */
    private static final double DRIEST_PERCENT = 1;
    /** Judgement: the fit has no wetter row that colours. */
    private static final double WETTEST_PERCENT = 10;

    private final ColourParameters parameters;

    public ColourKinetics(ColourParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    /** k: EBC per hour at substrate 1, 4 % moisture, and no colour yet. */
    public double ebcPerHour(double grainC) {
        return ebcPerHour(grainC, 0);
    }

    /** The same where another cause multiplies both laws by e to the power of lnRatio. */
    private double ebcPerHour(double grainC, double lnRatio) {
        Arrhenius slow = parameters.slow();
        Arrhenius fast = parameters.fast();
        double slowHours = Math.exp(-slow.lnRatio(grainC) - lnRatio) / slow.ratePerHour();
        double fastHours = Math.exp(-fast.lnRatio(grainC) - lnRatio) / fast.ratePerHour();
        return parameters.rateRatio() / (slowHours + fastHours);
    }

    /**
     * EBC per hour of malt of that colour now; never negative.
     *
     * @param wetBasisFraction moisture, share of one
     * @param substrateRatio S, more than 0
     */
    public double formationEbcPerHour(double colourEbc, double grainC, double wetBasisFraction, double substrateRatio) {
        double room = Math.max(0, 1 - colourEbc / parameters.mostEbc());
        return ceilinglessEbcPerHour(grainC, wetBasisFraction, substrateRatio) * room;
    }

    /** Colour after some hours at one temperature and moisture, EBC; closed form. */
    public double isothermalEbc(
            double startEbc, double grainC, double wetBasisFraction, double substrateRatio, double hours) {
        double mostEbc = parameters.mostEbc();
        if (startEbc >= mostEbc) return startEbc;
        double perHour = ceilinglessEbcPerHour(grainC, wetBasisFraction, substrateRatio) / mostEbc;
        return mostEbc - (mostEbc - startEbc) * Math.exp(-perHour * hours);
    }

    /**
     * Substrate S of malt that lay in a hot couch: that of its style times exp(index / e-folding), 1 for no couch; never
     * above the couch's ceiling unless the style alone is.
     *
     * @param styleRatio S of the style without a couch, more than 0
     * @param indexHours couch index X, hours, 0 or more
     */
    public double couchedSubstrateRatio(double styleRatio, double indexHours) {
        double couched = styleRatio * Math.exp(indexHours / parameters.couch().eFoldingHours());
        return Math.min(couched, Math.max(styleRatio, parameters.couch().mostRatio()));
    }

    private double ceilinglessEbcPerHour(double grainC, double wetBasisFraction, double substrateRatio) {
        double percent = Math.min(WETTEST_PERCENT, Math.max(DRIEST_PERCENT, 100 * wetBasisFraction));
        return substrateRatio * ebcPerHour(grainC, parameters.moisturePerPercent() * (percent - REFERENCE_PERCENT));
    }
}
