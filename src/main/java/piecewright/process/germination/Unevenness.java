package piecewright.process.germination;

import piecewright.process.LogNormal;

/**
 * How growth differs from corn to corn of a lot.
 *
 * @param cvRatio standard deviation of the logarithm of the growth rate, above 0: .15 very even, .30 poor
 */
public record Unevenness(double cvRatio) {
    /** Judgement: a normal lot. */
    public static final double NORMAL_CV_RATIO = 0.20;

    public Unevenness {
        if (!(cvRatio > 0)) throw new IllegalArgumentException("cvRatio must be above 0: " + cvRatio);
    }

    public static Unevenness normal() {
        return new Unevenness(NORMAL_CV_RATIO);
    }

    /** Share of germinated corns whose acrospire is shorter than half the corn, growth P above 0. */
    public double underHalfFraction(double growthRatio) {
        return LogNormal.shareBelow(0.5 / growthRatio, cvRatio);
    }

    /** Share of germinated corns whose acrospire is longer than the corn. */
    public double overgrownFraction(double growthRatio) {
        return LogNormal.shareBelow(growthRatio, cvRatio);
    }
}
