package piecewright.plan.search;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import piecewright.plan.HeapRules;
import piecewright.plan.Rules;

/** What a wet couch and all after it cost at least, by the coarse candidates it is heaped and spread at. */
final class HeapBound {
    /** Judgement: colder than any heap; slips cost less the colder it is. */
    private static final double COLDEST_C = -10;

    private final Space space;
    private final HeapLegs.Heaps heaps;
    private final FloorBound floor;
    private final double[][] toFloor;
    private final @Nullable double[][][] fromHeap;

    HeapBound(Space space, HeapLegs.Heaps heaps, FloorBound floor) {
        this.space = space;
        this.heaps = heaps;
        this.floor = floor;
        int size = space.grid().coarseSize();
        this.toFloor = new double[size][];
        for (int rank = 0; rank < size; rank++) toFloor[rank] = spread(rank);
        this.fromHeap = new double[floor.classes()][size][];
    }

    private double[] spread(int rank) {
        TimeGrid grid = space.grid();
        int at = grid.coarseAt(rank);
        int start = grid.minute(at);
        if (!space.canBegin(space.stops().heap(), at)) return new double[0];
        int last = grid.firstAtOrAfter(start + (int) (60 * heaps.rules().longestHours()) + 1);
        double[] least = new double[grid.coarseRank(last) - rank];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int i = 1; i < least.length; i++) {
            int to = grid.coarseAt(rank + i);
            if (!space.canBegin(space.stops().floor(), to)) continue;
            double slip = heaps.rules().liesItsTime((grid.minute(to) - start) / 60.0, COLDEST_C);
            if (slip == Double.POSITIVE_INFINITY) continue;
            least[i] = slip
                    + heaps.looks().costMinutes(at, to)
                    + space.stepCostMinutes(at, space.stops().floor(), to);
        }
        return least;
    }

    /** Costs from heaping at a coarse candidate to a spreading so many later, without what the moisture costs. */
    double[] toFloor(int rank) {
        return toFloor[rank];
    }

    /** From a heap of that class of moisture until the end, spread at a candidate of that rank or later. */
    double fromHeap(int rank, int row, int earliestRank) {
        double[] known = fromHeap[row][rank];
        if (known == null) known = worked(rank, row);
        fromHeap[row][rank] = known;
        int i = Math.max(0, earliestRank - rank);
        return i < known.length ? known[i] : Double.POSITIVE_INFINITY;
    }

    private double[] worked(int rank, int row) {
        double[] cost = toFloor[rank];
        double[] least = new double[cost.length];
        double best = Double.POSITIVE_INFINITY;
        for (int i = cost.length - 1; i >= 0; i--) {
            if (cost[i] < best) {
                int to = space.grid().coarseAt(rank + i);
                best = Math.min(best, cost[i] + floor.fromFloor(to, row, Rules.CAST_GROWTH_RATIO));
            }
            least[i] = best;
        }
        return least;
    }

    /** The first and the last coarse candidate at which grain drained at a candidate can be heaped; first after last for none. */
    int[] heapRanks(int drainedAt) {
        TimeGrid grid = space.grid();
        int start = grid.minute(drainedAt);
        int first = grid.firstAtOrAfter(start + (int) Math.ceil(60 * Rules.LAST_REST_SHORTEST_HOURS));
        int end = grid.firstAtOrAfter(start + (int) (60 * HeapRules.LATEST_HEAP_HOURS) + 1);
        return new int[] {grid.coarseRank(first), grid.coarseRank(end) - 1};
    }
}
