package piecewright.plan.search;

import java.util.Arrays;
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
    /** By stop and candidate: least cost of the acts up to a casting so many candidates later. */
    private final double[][][] toCast;
    /** The same for drains, another immersion coming first. */
    private final double[][][] toCastAgain;

    private final double[] soonAfter;
    private final double[] lateAfter;
    private final double[][][] lateFromHere;

    SteepBound(Space space, FloorBound floor, ChitClock clock) {
        this.space = space;
        this.floor = floor;
        this.clock = clock;
        this.coldestC = clock.coldestC();
        int size = space.grid().size();
        int stops = space.stops().floor();
        this.soonAfter = new double[size];
        this.lateAfter = new double[size];
        for (int at = 0; at < size; at++) {
            soonAfter[at] = after(at, SOON_GROWTH_RATIO);
            lateAfter[at] = after(at, Rules.CAST_GROWTH_RATIO);
        }
        this.toCast = new double[stops][size][];
        this.toCastAgain = new double[stops][size][];
        this.lateFromHere = new double[stops][size][];
        for (int stop = stops - 1; stop >= 0; stop--) {
            TimeGrid grid = space.grid();
            for (int at = grid.nextCoarse(0); at < size; at = grid.nextCoarse(at + 1)) sweep(stop, at);
        }
    }

    private double after(int at, double growthRatio) {
        double least = Double.POSITIVE_INFINITY;
        if (!space.canBegin(space.stops().floor(), at)) return least;
        for (int row = 0; row < floor.classes(); row++) {
            least = Math.min(least, floor.leastMoistureCost(row) + floor.fromFloor(at, row, growthRatio));
        }
        return least;
    }

    private void sweep(int stop, int at) {
        TimeGrid grid = space.grid();
        int reach = grid.firstAtOrAfter(grid.minute(at) + LONGEST_STEEP_MINUTES) - at;
        double[] again = new double[reach];
        Arrays.fill(again, Double.POSITIVE_INFINITY);
        double[] any = again;
        if (space.canBegin(stop, at)) {
            boolean soak = space.stops().kind(stop) == ActKind.SOAK;
            boolean more = soak || space.stops().number(stop) < space.stops().immersions();
            if (more) passOn(stop, at, again);
            any = again.clone();
            if (!soak && mayCast(stop)) cast(at, any);
        }
        toCast[stop][at] = any;
        toCastAgain[stop][at] = again;
        lateFromHere[stop][at] = fromHere(at, space.stops().kind(stop) == ActKind.SOAK ? any : again);
    }

    private boolean mayCast(int stop) {
        return space.stops().number(stop) >= space.setup().style().steep().fewestImmersions();
    }

    private void passOn(int stop, int at, double[] least) {
        TimeGrid grid = space.grid();
        int number = space.stops().number(stop);
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        double shortest =
                soak ? space.rules().immersionSlip(number, coldestC).shortestHours() : Rules.REST_SHORTEST_HOURS;
        double longest =
                soak ? Rules.longestImmersionHours(number) : space.rules().longestRestHours();
        int start = grid.minute(at);
        int end = Math.min(grid.size(), grid.firstAtOrAfter(start + (int) (60 * longest) + 1));
        int first = grid.firstAtOrAfter(start + (int) (60 * shortest));
        for (int to = grid.nextCoarse(first); to < end; to = grid.nextCoarse(to + 1)) {
            if (to == at || !space.canBegin(stop + 1, to)) continue;
            double hours = (grid.minute(to) - start) / 60.0;
            double slip = soak
                    ? space.rules().immersionEndsInTime(number, hours, coldestC)
                    : space.rules().restLastsItsTime(hours, coldestC);
            double step = space.stepCostMinutes(at, stop + 1, to) + slip;
            lower(least, toCast[stop + 1][to], to - at, step);
        }
    }

    private static void lower(double[] least, double[] after, int shift, double step) {
        int end = Math.min(least.length - shift, after.length);
        for (int i = 0; i < end; i++) {
            double cost = step + after[i];
            if (cost < least[i + shift]) least[i + shift] = cost;
        }
    }

    private void cast(int at, double[] least) {
        TimeGrid grid = space.grid();
        int start = grid.minute(at);
        int end = Math.min(
                at + least.length,
                grid.firstAtOrAfter(start + (int) (60 * space.rules().longestRestHours()) + 1));
        int first = grid.firstAtOrAfter(start + (int) (60 * Rules.LAST_REST_SHORTEST_HOURS));
        for (int to = grid.nextCoarse(first); to < end; to = grid.nextCoarse(to + 1)) {
            if (to > at && space.canBegin(space.stops().floor(), to)) {
                least[to - at] = Math.min(
                        least[to - at], space.stepCostMinutes(at, space.stops().floor(), to));
            }
        }
    }

    private double[] fromHere(int at, double[] cost) {
        double[] least = new double[cost.length];
        double best = Double.POSITIVE_INFINITY;
        for (int i = cost.length - 1; i >= 0; i--) {
            best = Math.min(best, cost[i] + lateAfter[at + i]);
            least[i] = best;
        }
        return least;
    }

    /** Cost-minutes still to come at least from a soak or drain. */
    double minutes(Label label) {
        int stop = label.stop();
        boolean soak = space.stops().kind(stop) == ActKind.SOAK;
        double[] cost = (soak ? toCast : toCastAgain)[stop][label.at()];
        double[] late = lateFromHere[stop][label.at()];
        int from = Math.max(0, clock.earliestRipe(label) - label.at());
        int soonEnd = Math.min(cost.length, Math.max(from, clock.grownAtMost(label, SOON_GROWTH_RATIO) - label.at()));
        double least = Double.POSITIVE_INFINITY;
        for (int i = from; i < soonEnd; i++) least = Math.min(least, cost[i] + soonAfter[label.at() + i]);
        if (soonEnd < late.length) least = Math.min(least, late[Math.max(from, soonEnd)]);
        return soak || !mayCast(stop) ? least : Math.min(least, castNow(label, from));
    }

    private double castNow(Label label, int from) {
        double moisture = label.grain().moistureFraction();
        double outCost = space.rules().steepOutMoisture(moisture);
        if (outCost == Double.POSITIVE_INFINITY) return outCost;
        TimeGrid grid = space.grid();
        int start = grid.minute(label.at());
        int end = grid.firstAtOrAfter(start + (int) (60 * space.rules().longestRestHours()) + 1);
        int first = grid.firstAtOrAfter(start + (int) (60 * Rules.LAST_REST_SHORTEST_HOURS));
        double least = Double.POSITIVE_INFINITY;
        int soonEnd = clock.grownAtMost(label, SOON_GROWTH_RATIO);
        int next = Math.max(first, Math.max(label.at() + 1, label.at() + from));
        for (int to = grid.nextCoarse(next); to < end; to = grid.nextCoarse(to + 1)) {
            double growth = to < soonEnd ? SOON_GROWTH_RATIO : Rules.CAST_GROWTH_RATIO;
            if (!space.canBegin(space.stops().floor(), to)) continue;
            double cost = space.stepCostMinutes(label.at(), space.stops().floor(), to)
                    + floor.fromFloor(to, floor.classOf(moisture), growth);
            least = Math.min(least, cost);
        }
        return outCost + least;
    }
}
