package piecewright.quantity;

/** Water content, stored on the wet basis: kg of water per kg of grain as it lies. */
public record Moisture(double wetBasisFraction) implements Comparable<Moisture> {
    public Moisture {
        if (!(wetBasisFraction >= 0 && wetBasisFraction < 1)) {
            throw new IllegalArgumentException("wetBasisFraction must be in [0, 1): " + wetBasisFraction);
        }
    }

    public static Moisture ofWetBasisPercent(double percent) {
        return new Moisture(percent / 100);
    }

    /** From kg of water per kg of dry matter, 0 or more. */
    public static Moisture ofDryBasisRatio(double dryBasisRatio) {
        return new Moisture(dryBasisRatio / (1 + dryBasisRatio));
    }

    /** kg of water per kg of dry matter. */
    public double dryBasisRatio() {
        return wetBasisFraction / (1 - wetBasisFraction);
    }

    public double wetBasisPercent() {
        return 100 * wetBasisFraction;
    }

    @Override
    public int compareTo(Moisture other) {
        return Double.compare(wetBasisFraction, other.wetBasisFraction);
    }
}
