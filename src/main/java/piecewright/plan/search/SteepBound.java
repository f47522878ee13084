package piecewright.plan.search;

import java.util.Arrays;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Rules;

/**
 * What a steep and all after it cost at least, by the instant it is cast: a backward pass over the steep's acts for
 * every casting at once. Together with how far a piece has chitted, and so when it can be cast at the earliest, it says
 * what a label still has to pay.
 */
final class SteepBound {
    private static final int LONGEST_STEEP_MINUTES = 7 * 24 * 60;
    /** Judgement: growth at casting that a piece cast soon after it is ripe does not pass. */
    private static final double SOON_GROWTH_RATIO = 0.06;

    private final Space space;
    private final FloorBound floor;
    private final ChitClock clock;
    private final double coldestC;
    /** By stop and coarse candidate: least cost of the acts up to a casting so many coarse candidates later. */
    private final double[][][] toCast;
    /** The same for drains, another immersion coming first. */
    private final double[][][] toCastAgain;

    private final double[] soonAfter;
    private final double[] lateAfter;
    private final double[][][] lateFromHere;
    private final Optional<HeapBound> heap;
    /** By stop and coarse candidate: the same by way of a wet couch. */
    private final double[][][] toHeapCast;

    private final double[][][] toHeapCastAgain;
    private final double[][][] heapedFromHere;

    SteepBound(Space space, FloorBound floor, ChitClock clock, Optional<HeapBound> heap) {
        this.heap = heap;
        this.space = space;
        this.floor = floor;
        this.clock = clock;
        this.coldestC = clock.coldestC();
        int size = space.grid().coarseSize();
        int stops = space.stops().steeps();
        this.soonAfter = new double[size];
        this.lateAfter = new double[size];
        Arrays.fill(soonAfter, Double.NaN);
        Arrays.fill(lateAfter, Double.NaN);
        this.toCast = new double[stops][size][];
        this.toCastAgain = new double[stops][size][];
        this.lateFromHere = new double[stops][size][];
        this.toHeapCast = new double[stops][size][];
        this.toHeapCastAgain = new double[stops][size][];
        this.heapedFromHere = new double[stops][size][];
        for (int stop = stops - 1; stop >= 0; stop--) {
            for (int rank = 0; rank < size; rank++) {
                sweep(stop, rank);
                if (space.heapHelps()) sweepHeaped(stop, rank);
            }
        }
    }

    /** From casting a piece that has hardly grown, whatever its moisture. */
    private double soonAfter(int rank) {
        if (Double.isNaN(soonAfter[rank])) soonAfter[rank] = after(rank, SOON_GROWTH_RATIO);
        return soonAfter[rank];
    }

    /** The same of one that has grown as far as a piece may that is cast. */
    private double lateAfter(int rank) {
        if (Double.isNaN(lateAfter[rank])) lateAfter[rank] = after(rank, Rules.CAST_GROWTH_RATIO);
        return lateAfter[rank];
    }

    private double after(int rank, double growthRatio) {
        int at = space.grid().coarseAt(rank);
        double least = Double.POSITIVE_INFINITY;
        if (!space.canBegin(space.stops().floor(), at)) return least;
        for (int row = 0; row < floor.classes(); row++) {
            double moistureCost = floor.leastMoistureCost(row);
            if (moistureCost < least) least = Math.min(least, moistureCost + floor.fromFloor(at, row, growthRatio));
        }
        return least;
    }

    private void sweep(int stop, int rank) {
        double[] again = open(rank);
        double[] any = again;
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        if (space.canBegin(stop, space.grid().coarseAt(rank))) {
            if (more(stop)) passOn(stop, rank, again, toCast);
            if (!soak) any = again.clone();
            if (!soak && mayCast(stop)) cast(rank, any);
        }
        toCast[stop][rank] = trimmed(any);
        toCastAgain[stop][rank] = soak ? toCast[stop][rank] : trimmed(again);
    }

    /** Costs of castings so many coarse candidates later, none known yet. */
    private double[] open(int rank) {
        double[] open =
                new double[rankFrom(space.grid().minute(space.grid().coarseAt(rank)) + LONGEST_STEEP_MINUTES) - rank];
        Arrays.fill(open, Double.POSITIVE_INFINITY);
        return open;
    }

    /** The same without the end that is out of reach. */
    private static double[] trimmed(double[] costs) {
        int end = costs.length;
        while (end > 0 && costs[end - 1] == Double.POSITIVE_INFINITY) end--;
        return end == costs.length ? costs : Arrays.copyOf(costs, end);
    }

    private boolean more(int stop) {
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        return soak || space.stops().number(stop) < space.stops().immersions();
    }

    private void sweepHeaped(int stop, int rank) {
        double[] again = open(rank);
        double[] any = again;
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        if (space.canBegin(stop, space.grid().coarseAt(rank))) {
            if (more(stop)) passOn(stop, rank, again, toHeapCast);
            if (!soak) any = again.clone();
            if (!soak && mayCast(stop)) heapAndCast(rank, any);
        }
        toHeapCast[stop][rank] = trimmed(any);
        toHeapCastAgain[stop][rank] = soak ? toHeapCast[stop][rank] : trimmed(again);
    }

    private void heapAndCast(int rank, double[] least) {
        HeapBound heaps = heap.orElseThrow();
        int at = space.grid().coarseAt(rank);
        int stop = space.stops().heap();
        int[] ranks = heaps.heapRanks(at);
        for (int later = Math.max(rank + 1, ranks[0]); later <= ranks[1]; later++) {
            int to = space.grid().coarseAt(later);
            if (space.canBegin(stop, to)) {
                lower(least, heaps.toFloor(later), later - rank, space.stepCostMinutes(at, stop, to));
            }
        }
    }

    /** Rank of the first coarse candidate at or after the minute. */
    private int rankFrom(int minute) {
        return space.grid().coarseRank(space.grid().firstAtOrAfter(minute));
    }

    private boolean mayCast(int stop) {
        return space.stops().number(stop) >= space.setup().style().steep().fewestImmersions();
    }

    private void passOn(int stop, int rank, double[] least, double[][][] table) {
        TimeGrid grid = space.grid();
        int number = space.stops().number(stop);
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        double shortest = soak ? space.rules().shortestImmersionHours(number) : Rules.REST_SHORTEST_HOURS;
        double longest =
                soak ? Rules.longestImmersionHours(number) : space.rules().longestRestHours();
        int at = grid.coarseAt(rank);
        int start = grid.minute(at);
        int end = rankFrom(start + (int) (60 * longest) + 1);
        for (int later = Math.max(rank + 1, rankFrom(start + (int) (60 * shortest))); later < end; later++) {
            int to = grid.coarseAt(later);
            if (!space.canBegin(stop + 1, to)) continue;
            double hours = (grid.minute(to) - start) / 60.0;
            double slip = soak
                    ? space.rules().immersionCostsAtLeast(number, hours, coldestC)
                    : space.rules().restLastsItsTime(hours, coldestC);
            double step = space.stepCostMinutes(at, stop + 1, to) + slip;
            lower(least, table[stop + 1][later], later - rank, step);
        }
    }

    private static void lower(double[] least, double[] after, int shift, double step) {
        int end = Math.min(least.length - shift, after.length);
        for (int i = 0; i < end; i++) {
            double cost = step + after[i];
            if (cost < least[i + shift]) least[i + shift] = cost;
        }
    }

    private void cast(int rank, double[] least) {
        TimeGrid grid = space.grid();
        int at = grid.coarseAt(rank);
        int start = grid.minute(at);
        int floorStop = space.stops().floor();
        int end = Math.min(
                rank + least.length, rankFrom(start + (int) (60 * space.rules().longestLastRestHours()) + 1));
        int first = Math.max(rank + 1, rankFrom(start + (int) (60 * Rules.LAST_REST_SHORTEST_HOURS)));
        for (int later = first; later < end; later++) {
            int to = grid.coarseAt(later);
            if (space.canBegin(floorStop, to)) {
                double cost = space.stepCostMinutes(at, floorStop, to) + lastRest(start, to);
                least[later - rank] = Math.min(least[later - rank], cost);
            }
        }
    }

    private double lastRest(int startMinute, int to) {
        return space.rules().lastRestLasts((space.grid().minute(to) - startMinute) / 60.0, coldestC);
    }

    /** By castings so many coarse candidates later or after: least cost until the end; worked out when first asked for. */
    private double[] fromHere(double[][][] known, int stop, int rank, double[][][] toCasting) {
        if (known[stop][rank] == null) known[stop][rank] = fromHere(rank, toCasting[stop][rank]);
        return known[stop][rank];
    }

    private double[] fromHere(int rank, double[] cost) {
        double[] least = new double[cost.length];
        double best = Double.POSITIVE_INFINITY;
        for (int i = cost.length - 1; i >= 0; i--) {
            if (cost[i] < best) best = Math.min(best, cost[i] + lateAfter(rank + i));
            least[i] = best;
        }
        return least;
    }

    /** Cost-minutes still to come at least from a soak or drain. */
    double minutes(Label label) {
        int stop = label.stop();
        TimeGrid grid = space.grid();
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        int rank = grid.coarseRank(label.at());
        double[] cost = (soak ? toCast : toCastAgain)[stop][rank];
        double[] late = fromHere(lateFromHere, stop, rank, toCastAgain);
        int ripe = clock.earliestRipe(label);
        ChitClock.Growth grows = clock.growthOf(label);
        int grown = grows.atMost(SOON_GROWTH_RATIO);
        int from = Math.max(0, grid.coarseRank(ripe) - rank);
        int soonEnd = Math.min(cost.length, Math.max(from, grid.coarseRank(grown) - rank));
        double least = Double.POSITIVE_INFINITY;
        for (int i = from; i < soonEnd; i++) {
            if (cost[i] < least) least = Math.min(least, cost[i] + soonAfter(rank + i));
        }
        if (soonEnd < late.length) least = Math.min(least, late[Math.max(from, soonEnd)]);
        if (space.heapHelps()) least = Math.min(least, heaped(label, rank));
        return soak || !mayCast(stop) ? least : Math.min(least, castNow(label, rank + from, grows));
    }

    /** Cost-minutes still to come at least from a soak or drain by way of a wet couch. */
    private double heaped(Label label, int rank) {
        TimeGrid grid = space.grid();
        int ripeRank = grid.coarseRank(clock.earliestRipeHeaped(label));
        double[] later = fromHere(heapedFromHere, label.stop(), rank, toHeapCastAgain);
        int i = Math.max(0, ripeRank - rank);
        double least = i < later.length ? later[i] : Double.POSITIVE_INFINITY;
        if (space.stops().kind(label.stop()) == ActKind.SOAK || !mayCast(label.stop())) return least;
        double moisture = label.grain().moistureFraction();
        double outCost = space.rules().steepOutMoisture(moisture);
        if (outCost == Double.POSITIVE_INFINITY) return least;
        HeapBound heaps = heap.orElseThrow();
        int row = floor.classOf(moisture);
        int stop = space.stops().heap();
        int[] ranks = heaps.heapRanks(label.at());
        for (int heapRank = Math.max(rank + 1, ranks[0]); heapRank <= ranks[1]; heapRank++) {
            int to = grid.coarseAt(heapRank);
            if (!space.canBegin(stop, to)) continue;
            double cost =
                    outCost + space.stepCostMinutes(label.at(), stop, to) + heaps.fromHeap(heapRank, row, ripeRank);
            least = Math.min(least, cost);
        }
        return least;
    }

    /** The same from a wet couch. */
    double fromHeap(Label label) {
        if (heap.isEmpty() || !space.heapHelps()) return 0;
        TimeGrid grid = space.grid();
        int row = floor.classOf(label.grain().moistureFraction());
        int ripeRank = grid.coarseRank(clock.earliestRipeHeaped(label));
        return heap.get().fromHeap(grid.coarseRank(label.at()), row, ripeRank);
    }

    private double castNow(Label label, int fromRank, ChitClock.Growth grows) {
        double moisture = label.grain().moistureFraction();
        double outCost = space.rules().steepOutMoisture(moisture);
        if (outCost == Double.POSITIVE_INFINITY) return outCost;
        TimeGrid grid = space.grid();
        int at = label.at();
        int start = grid.minute(at);
        int end = rankFrom(start + (int) (60 * space.rules().longestLastRestHours()) + 1);
        int first = rankFrom(start + (int) (60 * Rules.LAST_REST_SHORTEST_HOURS));
        int row = floor.classOf(moisture);
        double least = Double.POSITIVE_INFINITY;
        for (int later = Math.max(first, Math.max(grid.coarseRank(at) + 1, fromRank)); later < end; later++) {
            int to = grid.coarseAt(later);
            double growth = Math.min(Rules.CAST_GROWTH_RATIO, grows.by(to));
            if (!space.canBegin(space.stops().floor(), to)) continue;
            double before = space.stepCostMinutes(at, space.stops().floor(), to) + lastRest(start, to);
            if (before < least) least = Math.min(least, before + floor.fromFloor(to, row, growth));
        }
        return outCost + least;
    }
}
