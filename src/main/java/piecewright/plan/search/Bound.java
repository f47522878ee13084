package piecewright.plan.search;

import java.util.Arrays;
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
    private final FloorBound floor;
    private final SteepBound steep;
    private final int goal;

    /** Turnings on the floor and stirrings in the kiln. */
    record Chains(TurnChains turns, TurnChains stirs) {}

    Bound(Space space, Chains chains, ChitClock clock, KilnLegs.EndCost endCost, int goal) {
        this.space = space;
        this.goal = goal;
        this.kiln = new KilnBound(space, chains.stirs(), endCost, goal);
        this.floor = new FloorBound(space, chains.turns(), kiln, goal);
        this.steep = new SteepBound(space, floor, clock);
    }

    /** Cost-minutes still to come at least; infinite when no goal can be reached. */
    double minutes(Label label) {
        int stop = label.stop();
        if (stop > goal) return Double.POSITIVE_INFINITY;
        if (stop == goal) return 0;
        Grain grain = label.grain();
        return switch (space.stops().kind(stop)) {
            case SOAK, DRAIN -> goal < space.stops().floor() ? 0 : steep.minutes(label);
            case FLOOR -> floor.fromFloor(label.at(), floor.classOf(grain.moistureFraction()), grain.growthRatio());
            case WITHER -> floor.fromWither(label.at(), grain.growthRatio(), grain.moistureFraction());
            case LOAD -> kiln.fromLoad(label.at(), grain.moistureFraction());
            case RAISE -> kiln.fromRung(stop, label.at(), grain.slowWaterRatio() / grain.dryFraction());
            default -> kiln.minutes(stop, label.at());
        };
    }

    /** The last stop, counted from the end, that no candidate can both begin and carry on from; -1 when there is none. */
    int lastClosedStop() {
        Stops stops = space.stops();
        int[] fromTheEnd = {stops.off(), stops.cure(), stops.load(), stops.floor()};
        return Arrays.stream(fromTheEnd).filter(this::closed).findFirst().orElse(-1);
    }

    private boolean closed(int stop) {
        return IntStream.range(0, space.grid().size()).allMatch(at -> leastAt(stop, at) == Double.POSITIVE_INFINITY);
    }

    private double leastAt(int stop, int at) {
        if (stop == space.stops().floor()) return floor.fromFloor(at, floor.classes() - 1, Rules.CAST_GROWTH_RATIO);
        if (stop == space.stops().load()) return kiln.fromLoadAtLeast(at, Rules.WITHER_DRIEST_FRACTION);
        return kiln.minutes(stop, at);
    }
}
