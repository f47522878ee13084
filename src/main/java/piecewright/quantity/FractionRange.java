package piecewright.quantity;

/** A closed range of shares of one, low at most high. Not a confidence band. */
public record FractionRange(double lowFraction, double highFraction) {
    public FractionRange {
        if (!(lowFraction <= highFraction)) {
            throw new IllegalArgumentException(
                    "lowFraction must be at most highFraction: " + lowFraction + ", " + highFraction);
        }
    }

    /** The range stretched, where needed, to take in a share. */
    public FractionRange with(double fraction) {
        return new FractionRange(Math.min(lowFraction, fraction), Math.max(highFraction, fraction));
    }

    public boolean contains(double fraction) {
        return fraction >= lowFraction && fraction <= highFraction;
    }
}
