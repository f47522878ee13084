package piecewright.plan.search;

import java.util.function.Consumer;
import piecewright.plan.CouchRules;
import piecewright.plan.Rule;

/** What can follow packing the hot couch and breaking it. */
final class CouchLegs {
    private final Space space;
    private final BedRates afterwards;
    private final CouchRules rules;
    private final CouchCurves curves;
    private final TurnChains checks;

    /** What the legs and their bound share. */
    record Couch(CouchRules rules, CouchCurves curves, TurnChains checks, BedRates afterwards) {}

    CouchLegs(Space space, Couch couch) {
        this.space = space;
        this.afterwards = couch.afterwards();
        this.rules = couch.rules();
        this.curves = couch.curves();
        this.checks = couch.checks();
    }

    /** What a break at a candidate costs by itself. */
    interface Break {
        void at(int to, Grain grain, double ruleCostMinutes);
    }

    /** Every breaking that can end the couch packed at this label. */
    void fromPack(Label from, Consumer<Label> sink) {
        int stop = space.stops().breakCouch();
        breaks(from, (to, grain, cost) -> space.arrive(from, stop, to, grain, cost, sink));
    }

    /** Every candidate at which the couch packed at this label may be broken, with its grain and what rules cost. */
    void breaks(Label from, Break each) {
        TimeGrid grid = space.grid();
        CouchCurves.Curve curve = curves.of(from.at(), from.grain());
        int end = grid.firstAtOrAfter(curve.lastMinute() + 1);
        for (int to = grid.nextCoarse(from.at() + 1); to < end; to = grid.nextCoarse(to + 1)) {
            if (!space.canBegin(space.stops().breakCouch(), to)) continue;
            int minute = grid.minute(to);
            double index = rules.breaksAtIndex(curve.indexHours(minute));
            if (index == Double.POSITIVE_INFINITY) continue;
            if (!rules.coolEnough(curve.hottestC(minute))) break;
            each.at(
                    to,
                    curve.grainAt(from.grain(), minute),
                    space.charged(Rule.COUCH_INDEX, index) + checks.costMinutes(from.at(), to));
        }
    }

    /** Every loading of the kiln after the couch was broken at this label. */
    void fromBreak(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int load = space.stops().load();
        int start = grid.minute(from.at());
        BedWalk walk = new BedWalk(afterwards, from.grain(), start);
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * CouchRules.LOAD_HARD_HOURS) + 1));
        for (int at = from.at() + 1; at < end; at++) {
            if (!space.canBegin(load, at)) continue;
            double cost = CouchRules.loadSlip().costMinutes((grid.minute(at) - start) / 60.0);
            if (cost == Double.POSITIVE_INFINITY) continue;
            walk.to(grid.minute(at));
            Grain grain = walk.grain().grownTo(from.grain().growthRatio());
            space.arrive(from, load, at, grain, space.charged(Rule.LOADING, cost), sink);
        }
    }
}
