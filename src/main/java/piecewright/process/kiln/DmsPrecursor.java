package piecewright.process.kiln;

import java.util.Objects;

/** S-methylmethionine, the precursor of dimethyl sulphide, split by heat at first order whatever the moisture. */
public final class DmsPrecursor {
    /** Source: natural logarithm of 2. */
    private static final double LN_TWO_RATIO = Math.log(2);

    private final PrecursorParameters parameters;

    public DmsPrecursor(PrecursorParameters parameters) {
        this.parameters = Objects.requireNonNull(parameters);
    }

    public double halfLifeHours(double grainC) {
        double doublings = (parameters.boilC() - grainC) / parameters.doublingK();
        return parameters.halfLifeHours() * Math.exp(LN_TWO_RATIO * doublings);
    }

    /** Share of what is left that goes per hour. */
    public double lossPerHour(double grainC) {
        return LN_TWO_RATIO / halfLifeHours(grainC);
    }

    /** Share that survives some hours at one temperature. */
    public double survivingFraction(double grainC, double hours) {
        return Math.exp(-lossPerHour(grainC) * hours);
    }
}
