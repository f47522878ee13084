package piecewright.plan.search;

import java.util.Optional;
import java.util.function.Consumer;
import piecewright.plan.CouchRules;
import piecewright.plan.Practice;
import piecewright.plan.Rule;
import piecewright.plan.Setup;
import piecewright.process.germination.Cover;
import piecewright.style.GrowthSchedule;

/** What can follow spreading on the floor or spreading to wither. */
final class FloorLegs {
    /** Judgement: the longest growth anybody plans for. */
    static final int LONGEST_GROWTH_MINUTES = 14 * 24 * 60;
    /** Judgement: a wither may add this much acrospire at most. */
    static final double WITHER_GROWTH_RATIO = 0.25;

    private final Space space;
    private final Setup setup;
    private final GrowthSchedule growth;
    private final Beds beds;
    private final Optional<CouchRules> couch;
    private final int lastTurned;

    /** The growing and the withering bed, and their turnings. */
    record Beds(TurnChains growing, TurnChains withering, BedRates floor, BedRates wither) {}

    /** @param lastTurned candidate at which the bed was last moved before the search begins, if it does on a bed; else 0 */
    FloorLegs(Space space, Beds beds, int lastTurned) {
        this.lastTurned = lastTurned;
        this.space = space;
        this.setup = space.setup();
        this.growth = setup.style().growth();
        this.beds = beds;
        this.couch = setup.couching().map(couching -> new CouchRules(couching.schedule()));
    }

    /** Every wither and every end of growth that can follow the casting of this label. */
    void fromFloor(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        Stops stops = space.stops();
        BedWalk walk = new BedWalk(beds.floor(), from.grain(), grid.minute(from.at()));
        int end = grid.firstAtOrAfter(grid.minute(from.at()) + LONGEST_GROWTH_MINUTES + 1);
        boolean withers = growth.wither().highHours() > 0;
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            boolean toWither = withers && space.canBegin(stops.wither(), at);
            boolean toEnd = space.canBegin(stops.growthEnds(), at);
            if (!toWither && !toEnd) continue;
            walk.to(grid.minute(at));
            double grown = walk.growthRatio();
            if (grown > growth.acceptable().highFraction()) break;
            if (grown < growth.acceptable().lowFraction() - WITHER_GROWTH_RATIO) continue;
            double turning = beds.growing().costMinutes(turnedAt(from), at);
            Grain grain = walk.grain();
            if (toWither) space.arrive(from, stops.wither(), at, grain, turning, sink);
            if (toEnd) space.arrive(from, stops.growthEnds(), at, grain, turning + endCost(grain), sink);
        }
    }

    /** What growth that ends with this grain pays: at loading, or before it at packing the couch. */
    private double endCost(Grain grain) {
        double packing = couch.isPresent() ? couch.get().packsAtMoisture(grain.moistureFraction()) : 0;
        return space.charged(Rule.PACKING_MOISTURE, packing)
                + space.charged(Rule.GROWTH, space.rules().growthAtTheEnd(grain.growthRatio()));
    }

    /** Every loading or packing that can end the wither begun at this label. */
    void fromWither(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int ends = space.stops().growthEnds();
        int start = grid.minute(from.at());
        BedWalk walk = new BedWalk(beds.wither(), from.grain(), start);
        int end = grid.firstAtOrAfter(start + (int) (60 * space.rules().longestWitherHours()) + 1);
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            if (!space.canBegin(ends, at)) continue;
            walk.to(grid.minute(at));
            Grain grain = walk.grain();
            if (grain.growthRatio() > growth.acceptable().highFraction()
                    || grain.moistureFraction() < space.rules().driestFraction()) {
                break;
            }
            double cost = space.charged(Rule.WITHER_LENGTH, space.rules().withersItsTime(walk.hours(), walk.meanC()))
                    + endCost(grain)
                    + beds.withering().costMinutes(turnedAt(from), at);
            space.arrive(from, ends, at, grain, cost, sink);
        }
    }

    /** Where the bed of this label was last moved: as it was spread, or later if the search begins here. */
    int turnedAt(Label from) {
        return from.before() == null ? Math.max(from.at(), lastTurned) : from.at();
    }

    /** The bed of the piece on the floor. */
    static BedRates floorBed(Setup setup) {
        GrowthSchedule growth = setup.style().growth();
        var growing = setup.outfit().growing();
        return new BedRates(
                setup,
                new BedRates.Lying(
                        setup.air().floor(),
                        growing.areaM2(),
                        setup.models().growth().exposureRatio(Cover.DAMP_CLOTH),
                        growth.keepMoistureFraction(),
                        Practice.preferredTurnHours(growing.depthCm())));
    }

    /** The bed of the piece where it withers. */
    static BedRates witherBed(Setup setup) {
        var bed = setup.outfit().withering();
        return new BedRates(
                setup,
                new BedRates.Lying(
                        setup.air().wither(), bed.areaM2(), 1, 0, Practice.preferredTurnHours(bed.depthCm())));
    }
}
