package piecewright.assess;

/** A confidence interval of a share or of a difference of shares, low at most high. */
public record Interval(double lowFraction, double highFraction) {
    public Interval {
        if (!(lowFraction <= highFraction)) {
            throw new IllegalArgumentException(
                    "lowFraction must be at most highFraction: " + lowFraction + ", " + highFraction);
        }
    }
}
