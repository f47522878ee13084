package piecewright.purchase;

import java.util.List;
import piecewright.process.Ledgers;
import piecewright.process.PieceState;

/**
 * From the grain bought to the malt, kg by kg. Grain less all items is usefulMaltKg, to the rounding of doubles.
 *
 * @param grainKg grain that goes into the batch, floaters included; test samples come on top
 * @param scaleMaltKg what the scale shows at the end
 * @param usefulMaltKg malt from germinated corns
 */
public record Waterfall(double grainKg, List<Item> items, double scaleMaltKg, double usefulMaltKg) {
    public Waterfall {
        items = List.copyOf(items);
    }

    /** One loss, kg; the change of moisture may be negative where malt ends moister than its grain. */
    public record Item(Loss loss, double lostKg) {}

    /** Where weight goes, in order. */
    public enum Loss {
        CLEANING,
        LEACHING,
        RESPIRATION,
        ROOTLETS,
        ROASTING,
        HANDLING,
        MOISTURE_CHANGE,
        UNGERMINATED
    }

    /** The ledgers of a finished piece read as losses. */
    static Waterfall of(double grainKg, double startWaterRatio, PieceState finished, double usefulMaltKg) {
        Ledgers.DryMatter dry = finished.ledgers().dryMatter();
        double steepedDryKg = finished.mass().initialDryMatterKg();
        double steepedKg = steepedDryKg * (1 + startWaterRatio);
        double scaleKg = finished.mass().totalKg();
        double waterKg = startWaterRatio * steepedDryKg - finished.mass().waterKg();
        return new Waterfall(
                grainKg,
                List.of(
                        new Item(Loss.CLEANING, grainKg - steepedKg),
                        new Item(Loss.LEACHING, dry.leachedKg()),
                        new Item(Loss.RESPIRATION, dry.respiredKg()),
                        new Item(Loss.ROOTLETS, dry.rootletsKg()),
                        new Item(Loss.ROASTING, dry.roastedKg()),
                        new Item(Loss.HANDLING, dry.handlingKg()),
                        new Item(Loss.MOISTURE_CHANGE, waterKg),
                        new Item(Loss.UNGERMINATED, scaleKg - usefulMaltKg)),
                scaleKg,
                usefulMaltKg);
    }
}
