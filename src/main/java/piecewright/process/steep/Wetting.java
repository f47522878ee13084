package piecewright.process.steep;

import piecewright.process.GrainMass;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;
import piecewright.process.SteepState;

/** Bookkeeping and heat of steeping grain. */
public final class Wetting {
    /** Judgement: litres per kg of dry matter, from particle densities of 1.28 to 1.33 (Black's Treatise) at 12 %. */
    private static final double DRY_L_PER_KG = 0.74;
    /** Judgement: heat capacity of dry grain, kJ/kgK. */
    private static final double DRY_KJ_PER_KG_K = 1.30;
    /** Source: heat capacity of liquid water near 15 °C, kJ/kgK. */
    private static final double WATER_KJ_PER_KG_K = 4.19;

    private Wetting() {}

    /** The state with a later steep state: the water it drank and the dry matter it lost to the water are booked. */
    static PieceState drunk(PieceState before, SteepState after, SteepModel model) {
        GrainMass mass = before.mass();
        SteepState was = before.steep();
        double drunkKg = mass.initialDryMatterKg()
                * (after.coreRatio() + after.outerRatio() - was.coreRatio() - was.outerRatio());
        double leachedKg = mass.initialDryMatterKg()
                * (model.leachedFraction(after.soakHours(), after.waterChanges())
                        - model.leachedFraction(was.soakHours(), was.waterChanges()));
        Ledgers.Water water = before.ledgers().water();
        Ledgers.DryMatter dry = before.ledgers().dryMatter();
        Ledgers booked = new Ledgers(
                new Ledgers.Water(
                        water.absorbedKg() + drunkKg,
                        water.sprinkledKg(),
                        water.formedKg(),
                        water.evaporatedKg(),
                        water.removedKg()),
                new Ledgers.DryMatter(
                        dry.leachedKg() + leachedKg,
                        dry.respiredKg(),
                        dry.rootletsKg(),
                        dry.handlingKg(),
                        dry.roastedKg()),
                before.ledgers().gas());
        return before.withSteep(after)
                .withMass(new GrainMass(
                        mass.initialDryMatterKg(), mass.dryMatterKg() - leachedKg, mass.waterKg() + drunkKg))
                .withLedgers(booked);
    }

    /** Temperature of grain and fresh water once they have evened out, °C. */
    public static double mixedC(GrainMass mass, double grainC, Bath bath) {
        double grainKJPerK = DRY_KJ_PER_KG_K * mass.dryMatterKg() + WATER_KJ_PER_KG_K * mass.waterKg();
        double bathKJPerK = WATER_KJ_PER_KG_K * bath.waterL();
        return (grainKJPerK * grainC + bathKJPerK * bath.fillC()) / (grainKJPerK + bathKJPerK);
    }

    /** Litres the corns themselves take up, without the gaps between them. */
    public static double grainL(GrainMass mass) {
        return DRY_L_PER_KG * mass.dryMatterKg() + mass.waterKg();
    }
}
