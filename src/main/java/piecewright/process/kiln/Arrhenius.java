package piecewright.process.kiln;

import static piecewright.process.Psychrometrics.ZERO_CELSIUS_K;

/**
 * A rate that grows with temperature as Arrhenius says.
 *
 * @param ratePerHour rate at referenceK, per hour (of what, the owner says), more than 0
 * @param activationJPerMol activation energy, J/mol, 0 or more
 * @param referenceK absolute temperature of ratePerHour, K
 */
public record Arrhenius(double ratePerHour, double activationJPerMol, double referenceK) {
    /** Source: CODATA molar gas constant, rounded as the fits of this package used it. */
    public static final double GAS_J_PER_MOL_K = 8.314;

    public Arrhenius {
        if (!(ratePerHour > 0)) throw new IllegalArgumentException("ratePerHour must be above 0: " + ratePerHour);
        if (!(activationJPerMol >= 0)) {
            throw new IllegalArgumentException("activationJPerMol must be 0 or more: " + activationJPerMol);
        }
        if (!(referenceK > 0)) throw new IllegalArgumentException("referenceK must be above 0: " + referenceK);
    }

    /** The rate at a temperature in °C. */
    public double perHour(double temperatureC) {
        return ratePerHour * Math.exp(lnRatio(temperatureC));
    }

    /** Logarithm of the rate over that at referenceK: for who multiplies by exponentials anyway. */
    double lnRatio(double temperatureC) {
        double inverse = 1 / (temperatureC + ZERO_CELSIUS_K) - 1 / referenceK;
        return -activationJPerMol / GAS_J_PER_MOL_K * inverse;
    }
}
