package piecewright.process.kiln;

import java.util.Objects;

/** Diastatic power lost to heat, first order, faster when wet. Good to 15 percentage points between 45 and 105 °C. */
public final class EnzymeSurvival {
    private final EnzymeParameters parameters;

    public EnzymeSurvival(EnzymeParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    /** Share of what is left that goes per hour; moisture is a wet-basis share of one. */
    public double lossPerHour(double grainC, double wetBasisFraction) {
        double percent = Math.min(parameters.wettestPercent(), 100 * wetBasisFraction);
        return parameters.loss().ratePerHour()
                * Math.exp(parameters.loss().lnRatio(grainC)
                        + parameters.moisturePerPercent() * (percent - parameters.referencePercent()));
    }

    /** Share that survives some hours at one temperature and moisture. */
    public double survivingFraction(double grainC, double wetBasisFraction, double hours) {
        return Math.exp(-lossPerHour(grainC, wetBasisFraction) * hours);
    }
}
