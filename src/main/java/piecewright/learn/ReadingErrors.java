package piecewright.learn;

import piecewright.belief.ReadingNoise;
import piecewright.house.Scale;
import piecewright.process.germination.Unevenness;

/** How far readings at home usually are from what they mean, as standard errors. */
final class ReadingErrors {
    /** Judgement: film left on drained grain, points of moisture as a share; one protocol, kitchen draining. */
    static final double DRAINED_FRACTION = ReadingNoise.DRAINED_FRACTION;
    /** Judgement: crumbs, damp cloths, what sticks to the vessel: share of the weight after casting. */
    static final double HANDLING_FRACTION = 0.005;
    /** Judgement: a sample dried in an oven at home, share of wet weight. */
    static final double SAMPLE_FRACTION = ReadingNoise.SAMPLE_FRACTION;
    /** Judgement: one spot of a level bed against its mean, K. */
    static final double BED_K = 1.0;
    /** Judgement: one spot of a hot couch against its mean, offset for place allowed for, K. */
    static final double COUCH_K = 1.2;
    /** Judgement: top and edge of a couch run 2 to 5 K below its mean. */
    static final double COUCH_RIM_K = 3;
    /** Judgement: top or edge of a couch against its mean, K. */
    static final double COUCH_EDGE_K = 2.5;
    /** Judgement: a thermometer under the bed, K. */
    static final double AIR_ON_K = 0.7;
    /** Judgement: a count's error that more corns do not lessen, standard deviation of the logarithm. */
    static final double COUNT_SD = 0.10;
    /** Judgement: colour compared or measured at home, standard deviation of the logarithm. */
    static final double COLOUR_SD = 0.10;
    /** Judgement: from here on the heat is checked by itself, and readings tell of that rather than of its rate, °C. */
    static final double COUCH_CHECKED_C = 48;

    private ReadingErrors() {}

    /** A drained piece on the scale, kg: the scale's step and the film. */
    static double drainedKg(Scale scale, double netKg, double dryMatterKg) {
        return Math.hypot(stepKg(scale), DRAINED_FRACTION * netKg * netKg / dryMatterKg);
    }

    /** A piece without free water on the scale, kg. */
    static double handledKg(Scale scale, double netKg) {
        return Math.hypot(stepKg(scale), HANDLING_FRACTION * netKg);
    }

    /** A count of so many germinated corns, standard deviation of the logarithm. */
    static double acrospireSd(int corns) {
        double cv = Unevenness.NORMAL_CV_RATIO;
        return Math.sqrt(cv * cv / corns + COUNT_SD * COUNT_SD);
    }

    private static double stepKg(Scale scale) {
        return scale.stepG() / 1000 / Math.sqrt(12);
    }
}
