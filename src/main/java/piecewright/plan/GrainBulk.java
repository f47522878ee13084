package piecewright.plan;

import piecewright.grain.GrainKind;

/** How much room the grains take. */
final class GrainBulk {
    private GrainBulk() {}

    /** Dry bulk, kg per litre. Judgement: bushel weights and practice; spelt as sold for malting, out of its hull. */
    static double dryKgPerL(GrainKind grain) {
        return switch (grain) {
            case BARLEY -> 0.65;
            case HULLLESS_BARLEY -> 0.75;
            case WHEAT -> 0.77;
            case RYE -> 0.72;
            case OATS -> 0.48;
            case SPELT -> 0.75;
        };
    }

    /** How much denser green malt of a grain lies than barley's. Judgement: as the dry grain does. */
    static double denserRatio(GrainKind grain) {
        return dryKgPerL(grain) / dryKgPerL(GrainKind.BARLEY);
    }
}
