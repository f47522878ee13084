package piecewright.plan.search;

import java.util.function.Consumer;
import piecewright.plan.HeapRules;
import piecewright.plan.Rule;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.process.germination.FloorActs;

/** What can follow heaping the steeped grain to chit. */
final class HeapLegs {
    private final Space space;
    private final Setup setup;
    private final HeapRules rules;
    private final TurnChains looks;
    private final double ripeChitRatio;
    private final int lastLooked;

    /** What the legs share: what heaps may do, and the looks at them. */
    record Heaps(HeapRules rules, TurnChains looks) {}

    /** @param lastLooked candidate at which a heap was last looked at before the search begins, if it does in one; else 0 */
    HeapLegs(Space space, Heaps heaps, double ripeChitRatio, int lastLooked) {
        this.lastLooked = lastLooked;
        this.space = space;
        this.setup = space.setup();
        this.rules = heaps.rules();
        this.looks = heaps.looks();
        this.ripeChitRatio = ripeChitRatio;
    }

    /** Every spreading on the floor that can end the wet couch begun at this label. */
    void fromHeap(Label from, Consumer<Label> sink) {
        TimeGrid grid = space.grid();
        int floor = space.stops().floor();
        int start = grid.minute(from.at());
        HeapWalk walk = new HeapWalk(setup, from.grain(), start);
        int end = grid.firstAtOrAfter(start + (int) (60 * rules.longestHours()) + 1);
        for (int at = grid.nextCoarse(from.at() + 1); at < end; at = grid.nextCoarse(at + 1)) {
            if (!space.canBegin(floor, at)) continue;
            walk.to(grid.minute(at));
            Grain grain = walk.grain();
            if (grain.growthRatio() > Rules.CAST_GROWTH_RATIO || !rules.coolEnough(walk.warmestC())) break;
            if (grain.chitRatio() < ripeChitRatio) continue;
            double cost = space.charged(Rule.HEAP_LENGTH, rules.liesItsTime(walk.hours(), walk.meanSinceC()))
                    + looks.costMinutes(lookedAt(from), at);
            double airC = setup.air().floor().airC(grid.minute(at) / 60.0);
            double spreadC = airC + FloorActs.WARMTH_LEFT_RATIO * (grain.grainC() - airC);
            space.arrive(from, floor, at, grain.at(spreadC), cost, sink);
        }
    }

    /** Where the heap of this label was last looked at: as it was heaped, or later if the search begins here. */
    int lookedAt(Label from) {
        return from.before() == null ? Math.max(from.at(), lastLooked) : from.at();
    }
}
