package piecewright.quantity;

/** A closed range of shares of one, low at most high. Not a confidence band. */
public record FractionRange(double lowFraction, double highFraction) {
    public FractionRange {
        if (!(lowFraction <= highFraction)) {
            throw new IllegalArgumentException(
                    "lowFraction must be at most highFraction: " + lowFraction + ", " + highFraction);
        }
    }

    public boolean contains(double fraction) {
        return fraction >= lowFraction && fraction <= highFraction;
    }
}
