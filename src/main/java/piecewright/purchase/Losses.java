package piecewright.purchase;

import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/**
 * What gets lost, each as a share of what is there when it is lost; respiration and rootlets of a germinated corn.
 *
 * @param roastingFraction dry matter lost to roasting; none below 110 °C
 */
public record Losses(
        double cleaningFraction,
        double handlingFraction,
        double leachingFraction,
        double respirationFraction,
        double rootletsFraction,
        double roastingFraction) {
    public Losses {
        share("cleaningFraction", cleaningFraction);
        share("handlingFraction", handlingFraction);
        share("leachingFraction", leachingFraction);
        share("respirationFraction", respirationFraction);
        share("rootletsFraction", rootletsFraction);
        share("roastingFraction", roastingFraction);
    }

    /**
     * What a finished piece's ledgers tell.
     *
     * @param cleaningFraction lost before the ledgers began
     * @param growingFraction share of corns that grew, (0, 1]
     */
    public static Losses of(PieceState finished, double cleaningFraction, double growingFraction) {
        Ledgers.DryMatter dry = finished.ledgers().dryMatter();
        double steepedKg = finished.mass().initialDryMatterKg();
        double grownKg = growingFraction * (steepedKg - dry.leachedKg());
        double breathedKg = grownKg - dry.respiredKg();
        double roastedOfKg = finished.mass().dryMatterKg() + dry.roastedKg();
        double handledOfKg = roastedOfKg + dry.handlingKg();
        return new Losses(
                cleaningFraction,
                dry.handlingKg() / handledOfKg,
                dry.leachedKg() / steepedKg,
                dry.respiredKg() / grownKg,
                dry.rootletsKg() / breathedKg,
                dry.roastedKg() / roastedOfKg);
    }

    /** Malt from germinated corns, kg per kg of grain bought. */
    public double usefulRatio(Moisture grain, Moisture malt, double growingFraction) {
        return growingFraction * germinatedRatio() * common(grain, malt);
    }

    /** What the scale shows, ungerminated corns included, kg per kg of grain bought. */
    public double scaleRatio(Moisture grain, Moisture malt, double growingFraction) {
        double deadRatio = (1 - leachingFraction) * (1 - roastingFraction);
        return (growingFraction * germinatedRatio() + (1 - growingFraction) * deadRatio) * common(grain, malt);
    }

    private double germinatedRatio() {
        return (1 - leachingFraction) * (1 - respirationFraction) * (1 - rootletsFraction) * (1 - roastingFraction);
    }

    private double common(Moisture grain, Moisture malt) {
        return (1 - cleaningFraction)
                * (1 - handlingFraction)
                * (1 - grain.wetBasisFraction())
                / (1 - malt.wetBasisFraction());
    }

    private static void share(String name, double fraction) {
        if (!(fraction >= 0 && fraction < 1)) {
            throw new IllegalArgumentException(name + " must be in [0, 1): " + fraction);
        }
    }
}
