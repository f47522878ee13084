package piecewright.process.steep;

import piecewright.grain.GrainKind;

/** Usual uptake rates of the grains, as multiples of the reference rate. */
final class GrainRates {
    /** Judgement: middle of published and practice lots of barley. */
    private static final double BARLEY_RATIO = 1.2;
    /** Judgement: losing the husk speeds uptake (direction: Mok 1983, Shimoda 1998). */
    private static final double HULLLESS_BARLEY_RATIO = 1.5;
    /** Judgement: 1.11 to 1.15 times barley from Becker's diffusion curve, times the barley default, rounded. */
    private static final double WHEAT_RATIO = 1.4;
    /** Judgement: no husk, small corn. */
    private static final double RYE_RATIO = 1.8;
    /** Judgement: hulled oats. */
    private static final double OATS_RATIO = 1.0;
    /** Judgement: dehulled spelt; in the hull 0.9 would do. */
    private static final double SPELT_RATIO = 1.4;

    private GrainRates() {}

    static double usualRateRatio(GrainKind kind) {
        return switch (kind) {
            case BARLEY -> BARLEY_RATIO;
            case HULLLESS_BARLEY -> HULLLESS_BARLEY_RATIO;
            case WHEAT -> WHEAT_RATIO;
            case RYE -> RYE_RATIO;
            case OATS -> OATS_RATIO;
            case SPELT -> SPELT_RATIO;
        };
    }
}
