package piecewright.plan.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import piecewright.plan.Rules;

/**
 * Cost-to-go that no plan can beat, for any label: built backward from the end, stage by stage, each with what its
 * stage knows. Time, work, hours, turnings, stirrings and curing count in full; slips count as for the coldest grain;
 * growth as for the fastest bed, drying as for the driest weather.
 */
final class Bound {
    private final Space space;
    private final KilnBound kiln;
    private final Optional<CouchBound> couch;
    private final FloorBound floor;
    private final SteepBound steep;
    private final int goal;

    /** Turnings on the floor, stirrings in the kiln, looks at the couches. */
    record Chains(
            FloorLegs.Beds beds, TurnChains stirs, Optional<HeapLegs.Heaps> heaps, Optional<CouchLegs.Couch> couch) {}

    Bound(Space space, Chains chains, ChitClock clock, KilnLegs.EndCost endCost, int goal) {
        this.space = space;
        this.goal = goal;
        this.kiln = new KilnBound(space, chains.stirs(), endCost, goal);
        this.couch = chains.couch().map(one -> new CouchBound(space, one, kiln, goal, FloorBound.warmestC(space)));
        this.floor = new FloorBound(space, chains.beds(), new FloorBound.After(kiln, couch), goal);
        Optional<HeapBound> heap = chains.heaps()
                .filter(one -> space.heapHelps() && goal >= space.stops().floor())
                .map(one -> new HeapBound(space, one, floor));
        this.steep = new SteepBound(space, floor, clock, heap);
    }

    /** Cost-minutes still to come at least; infinite when no goal can be reached. */
    double minutes(Label label) {
        int stop = label.stop();
        if (stop > goal) return Double.POSITIVE_INFINITY;
        if (stop == goal) return 0;
        Grain grain = label.grain();
        return switch (space.stops().kind(stop)) {
            case SOAK, DRAIN -> goal < space.stops().floor() ? 0 : steep.minutes(label);
            case HEAP -> steep.fromHeap(label);
            case FLOOR -> floor.fromFloor(label.at(), floor.classOf(grain.moistureFraction()), grain.growthRatio());
            case WITHER -> floor.fromWither(label.at(), grain.growthRatio(), grain.moistureFraction());
            case PACK -> couch.orElseThrow().fromPack(label);
            case BREAK -> couch.orElseThrow().fromBreak(label.at(), grain.moistureFraction());
            case LOAD -> kiln.fromLoad(label.at(), grain.moistureFraction());
            case RAISE -> kiln.fromRung(stop, label.at(), grain.slowWaterRatio() / grain.dryFraction());
            default -> kiln.minutes(stop, label.at());
        };
    }

    /** The last stop, counted from the end, that no candidate can both begin and carry on from; -1 when there is none. */
    int lastClosedStop() {
        Stops stops = space.stops();
        int[] fromTheEnd = stops.couched()
                ? new int[] {
                    stops.last(),
                    stops.off(),
                    stops.cure(),
                    stops.load(),
                    stops.breakCouch(),
                    stops.pack(),
                    stops.floor()
                }
                : new int[] {stops.last(), stops.off(), stops.cure(), stops.load(), stops.floor()};
        return Arrays.stream(fromTheEnd).filter(this::closed).findFirst().orElse(-1);
    }

    private boolean closed(int stop) {
        return IntStream.range(0, space.grid().size()).allMatch(at -> leastAt(stop, at) == Double.POSITIVE_INFINITY);
    }

    private double leastAt(int stop, int at) {
        if (stop == space.stops().floor()) return floor.fromFloor(at, floor.classes() - 1, Rules.CAST_GROWTH_RATIO);
        if (stop == space.stops().load())
            return kiln.fromLoadAtLeast(at, space.rules().driestLoadFraction());
        if (couch.isPresent() && stop == space.stops().pack())
            return couch.get().fromPackAtLeast(at);
        if (couch.isPresent() && stop == space.stops().breakCouch()) {
            return couch.get().fromBreak(at, space.rules().driestFraction());
        }
        return kiln.minutes(stop, at);
    }
}
