package piecewright.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import piecewright.assess.LotJudge;
import piecewright.assess.LotJudgement.MouldRisk;
import piecewright.grain.GrainKind;
import piecewright.grain.GrainLot;
import piecewright.grain.Treatment;

/** Which dangers stand at which act. */
final class Cautions {
    /** Judgement: over this, heat can start a fire or burn a hand. */
    private static final double HOT_C = 60;
    /** Judgement: a wet piece heavier than this, kg, is lifted by two. */
    private static final double HEAVY_KG = 15;

    private static final Set<ActKind> LIFTED = EnumSet.of(
            ActKind.DRAIN, ActKind.HEAP, ActKind.FLOOR, ActKind.PACK, ActKind.BREAK, ActKind.LOAD, ActKind.STEW);

    private static final Set<GrainKind> HUSKLESS =
            EnumSet.of(GrainKind.WHEAT, GrainKind.RYE, GrainKind.SPELT, GrainKind.HULLLESS_BARLEY);

    private final GrainKind grain;
    private final GrainLot lot;
    private final MouldRisk mould;

    Cautions(GrainLot lot) {
        this.grain = lot.kind();
        this.lot = lot;
        this.mould = LotJudge.effects(lot).mould();
    }

    /** @param massKg what has to be lifted, kg; water in the vessel included */
    List<Caution> at(ActKind kind, int number, double massKg, double setC) {
        List<Caution> cautions = new ArrayList<>();
        switch (kind) {
            case SOAK -> soak(number, cautions);
            case HEAP -> heap(cautions);
            case LOOK -> cautions.add(Caution.CARBON_DIOXIDE);
            case FLOOR -> floor(cautions);
            case TURN, SPRINKLE, WITHER -> cautions.add(Caution.MOULD);
            case STEW ->
                cautions.addAll(
                        List.of(Caution.RAW_GREEN_MALT, Caution.ELECTRICITY_NEAR_WET_GRAIN, Caution.HOT_SURFACES));
            case ROAST -> cautions.addAll(List.of(Caution.ROASTING_FIRE, Caution.ROASTING_SMOKE, Caution.HOT_SURFACES));
            case LOAD ->
                cautions.addAll(List.of(
                        Caution.RAW_GREEN_MALT,
                        Caution.ELECTRICITY_NEAR_WET_GRAIN,
                        Caution.FIRE,
                        Caution.COMBUSTION_GASES));
            case RAISE, CURE -> {
                if (setC > HOT_C) cautions.add(Caution.FIRE);
            }
            case OFF -> cautions.addAll(List.of(Caution.HOT_SURFACES, Caution.FIRE));
            case PACK, CHECK, BREAK -> {
                if (kind == ActKind.PACK) cautions.add(Caution.RAW_GREEN_MALT);
                cautions.add(Caution.COUCH_GAS);
                if (kind == ActKind.BREAK || mould != MouldRisk.LOW) cautions.add(Caution.MOULD);
            }
            case DEROOT -> cautions.addAll(List.of(Caution.DUST, Caution.ALLERGENS));
            case DRAIN, STIR, LOWER -> {
                // nothing of their own
            }
        }
        boolean lifts = LIFTED.contains(kind);
        if (lifts && massKg > HEAVY_KG) cautions.add(Caution.LIFTING);
        return cautions;
    }

    private void soak(int number, List<Caution> cautions) {
        if (number > 1) return;
        if (lot.safeTreatment() == Treatment.UNKNOWN) cautions.add(Caution.UNKNOWN_TREATMENT);
        cautions.add(Caution.DUST);
        if (mould == MouldRisk.HIGH) cautions.add(Caution.MOULD);
        boolean ergoty = lot.seen().ergotGPerKg().orElse(0) > 0;
        if (grain == GrainKind.RYE || ergoty) cautions.add(Caution.ERGOT);
        if (grain == GrainKind.OATS) cautions.add(Caution.OATS_FLOAT);
        if (HUSKLESS.contains(grain)) cautions.add(Caution.PACKS_DENSE);
    }

    private void heap(List<Caution> cautions) {
        cautions.add(Caution.RAW_GREEN_MALT);
        cautions.add(Caution.CARBON_DIOXIDE);
        if (HUSKLESS.contains(grain)) cautions.add(Caution.PACKS_DENSE);
    }

    private void floor(List<Caution> cautions) {
        cautions.add(Caution.RAW_GREEN_MALT);
        cautions.add(Caution.CARBON_DIOXIDE);
        if (HUSKLESS.contains(grain)) cautions.add(Caution.PACKS_DENSE);
    }
}
