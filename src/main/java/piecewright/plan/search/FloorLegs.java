package piecewright.plan.search;

import java.util.function.Consumer;
import piecewright.plan.Practice;
import piecewright.plan.Rules;
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
    private final TurnChains turns;
    private final int lastTurned;

    /** @param lastTurned candidate at which the bed was last moved before the search begins, if it does on a bed; else 0 */
    FloorLegs(Space space, TurnChains turns, int lastTurned) {
        this.lastTurned = lastTurned;
        this.space = space;
        this.setup = space.setup();
        this.growth = setup.style().growth();
        this.turns = turns;
    }

    /** Every wither and every loading that can end the growth begun at this label. */
    void fromFloor(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        Stops stops = space.stops();
        BedWalk walk = new BedWalk(floorSetting(setup), from.grain(), grid.minute(from.at()));
        int end = grid.firstAtOrAfter(grid.minute(from.at()) + LONGEST_GROWTH_MINUTES + 1);
        boolean withers = growth.wither().highHours() > 0;
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            boolean toWither = withers && space.canBegin(stops.wither(), at);
            boolean toLoad = space.canBegin(stops.load(), at);
            if (!toWither && !toLoad) continue;
            walk.to(grid.minute(at));
            double grown = walk.grain().growthRatio();
            if (grown > growth.acceptable().highFraction()) break;
            if (grown < growth.acceptable().lowFraction() - WITHER_GROWTH_RATIO) continue;
            double turning = turns.costMinutes(turnedAt(from), at);
            if (toWither) space.arrive(from, stops.wither(), at, walk.grain(), turning, sink);
            if (toLoad) {
                double cost = turning + space.rules().growthAtLoading(grown);
                space.arrive(from, stops.load(), at, walk.grain(), cost, sink);
            }
        }
    }

    /** Every loading that can end the wither begun at this label. */
    void fromWither(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int load = space.stops().load();
        int start = grid.minute(from.at());
        BedWalk walk = new BedWalk(witherSetting(), from.grain(), start);
        double longest = Math.min(growth.wither().highHours(), Practice.WITHER.longestHours());
        int end = grid.firstAtOrAfter(start + (int) (60 * longest) + 1);
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            if (!space.canBegin(load, at)) continue;
            walk.to(grid.minute(at));
            if (walk.grain().growthRatio() > growth.acceptable().highFraction()
                    || walk.grain().moistureFraction() < Rules.WITHER_DRIEST_FRACTION) {
                break;
            }
            double cost = space.rules().withersItsTime(walk.hours(), walk.meanC())
                    + space.rules().growthAtLoading(walk.grain().growthRatio())
                    + turns.costMinutes(turnedAt(from), at);
            space.arrive(from, load, at, walk.grain(), cost, sink);
        }
    }

    /** Where the bed of this label was last moved: as it was spread, or later if the search begins here. */
    int turnedAt(Label from) {
        return from.before() == null ? Math.max(from.at(), lastTurned) : from.at();
    }

    /** The bed of the piece on the floor. */
    static BedWalk.Setting floorSetting(Setup setup) {
        GrowthSchedule growth = setup.style().growth();
        var growing = setup.outfit().growing();
        return new BedWalk.Setting(
                setup,
                setup.air().floor(),
                growing.areaM2(),
                setup.models().growth().exposureRatio(Cover.DAMP_CLOTH),
                growth.keepMoistureFraction(),
                Practice.preferredTurnHours(growing.depthCm()));
    }

    private BedWalk.Setting witherSetting() {
        var growing = setup.outfit().growing();
        return new BedWalk.Setting(
                setup, setup.air().floor(), growing.areaM2(), 1, 0, Practice.preferredTurnHours(growing.depthCm()));
    }
}
