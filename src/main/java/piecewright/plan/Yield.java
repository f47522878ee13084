package piecewright.plan;

import piecewright.process.PieceState;

/** What of the finished weight is malt. */
public final class Yield {
    private Yield() {}

    /**
     * Malt from germinated corns only, kg: the finished weight less the corns that never grew, which leached like the
     * rest, and burnt off in the roast like the rest, but neither breathed nor rooted.
     *
     * @param energyFraction share of corns that grow, (0, 1]
     */
    public static double usefulMaltKg(PieceState finished, double energyFraction) {
        var dry = finished.ledgers().dryMatter();
        double initialKg = finished.mass().initialDryMatterKg();
        double leachedFraction = dry.leachedKg() / initialKg;
        double beforeRoastKg = finished.mass().dryMatterKg() + dry.roastedKg();
        double roastedFraction = dry.roastedKg() / beforeRoastKg;
        double handledFraction = dry.handlingKg() / (beforeRoastKg + dry.handlingKg());
        double deadKg = initialKg
                * (1 - energyFraction)
                * (1 - leachedFraction)
                * (1 - handledFraction)
                * (1 - roastedFraction);
        double usefulDryKg = Math.max(0, finished.mass().dryMatterKg() - deadKg);
        return usefulDryKg * (1 + finished.mass().dryBasisRatio());
    }
}
