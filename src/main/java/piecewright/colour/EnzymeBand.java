package piecewright.colour;

/**
 * Between which shares of the green malt's diastatic power four malts in five keep, once so much is told. The doubt is
 * one of the rate at which it is lost, so that a share stays between nothing and all.
 *
 * @param lowFraction [0, highFraction]
 * @param highFraction [lowFraction, 1]
 */
public record EnzymeBand(double lowFraction, double highFraction) {
    /**
     * Judgement: eight rates of loss in ten lie within this factor; about half it makes the 25 points either way that the
     * constructed law is trusted to. No kinetics of it were published.
     */
    public static final double RATE_RATIO = 2.2;

    /** The band about a share that the law tells, [0, 1]. */
    public static EnzymeBand of(double diastaticFraction) {
        return new EnzymeBand(Math.pow(diastaticFraction, RATE_RATIO), Math.pow(diastaticFraction, 1 / RATE_RATIO));
    }
}
