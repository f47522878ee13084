package piecewright.plan.search;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import piecewright.plan.Rules;
import piecewright.plan.Slip;
import piecewright.process.Surroundings;

/** What kilning and all after it costs at least, by candidate, and from loading also by moisture. */
final class KilnBound {
    private static final int STEP_MINUTES = 15;
    private static final int LONGEST_KILN_MINUTES = 8 * 24 * 60;
    /** Judgement: covers the quarter-hour steps of the drying tables. */
    private static final double SAFE_DRYING_RATIO = 0.97;
    /** Judgement: width of a class of moisture at loading, wet basis. */
    private static final double CLASS_FRACTION = 0.02;

    /** Judgement: wetter at loading makes no more classes, wet basis. */
    private static final double WETTEST_CLASS_FRACTION = 0.50;

    /** Judgement: no piece is loaded wetter, kg of water per kg of dry matter. */
    private static final double WETTEST_RATIO = 1.05;

    private final Space space;
    private final TurnChains stirs;
    private final KilnLegs.EndCost endCost;
    private final int goal;
    private final double[][] toGo;
    private final double driestFraction;
    private final int classes;
    private final double[][] fromLoad;
    /** By level of heat: minutes the slow kiln takes from the wettest to each moisture, in the fastest and slowest room. */
    private final double[][] fastest;

    private final double[][] slowest;
    private final double[] wetFastest;

    KilnBound(Space space, TurnChains stirs, KilnLegs.EndCost endCost, int goal) {
        this.space = space;
        this.stirs = stirs;
        this.endCost = endCost;
        this.goal = goal;
        int stops = space.stops().count();
        int size = space.grid().size();
        this.toGo = new double[stops][size];
        this.driestFraction = space.rules().driestLoadFraction();
        this.classes = (int) Math.round((WETTEST_CLASS_FRACTION - driestFraction) / CLASS_FRACTION);
        this.fromLoad = new double[classes][size];
        for (double[] row : fromLoad) Arrays.fill(row, Double.NaN);
        int levels = space.heat().cureLevel();
        this.fastest = new double[levels][];
        this.slowest = new double[levels][];
        Set<Integer> roomsC = roomsC();
        for (int level = 0; level < levels; level++) tabulate(level, roomsC);
        this.wetFastest = quickest(space.heat().expected(0), roomsC);
        for (int stop = stops - 1; stop > space.stops().load(); stop--) sweep(stop);
    }

    private void tabulate(int level, Set<Integer> roomsC) {
        fastest[level] = quickest(space.heat().slow(level), roomsC);
        slowest[level] = new double[fastest[level].length];
        for (int roomC : roomsC) {
            double[] minutes = space.heat().slow(level).minutesFromWettest(roomC);
            for (int i = 0; i < minutes.length; i++) slowest[level][i] = Math.max(slowest[level][i], minutes[i]);
        }
    }

    private static double[] quickest(DryTable table, Set<Integer> roomsC) {
        double[] least = {};
        for (int roomC : roomsC) {
            double[] minutes = table.minutesFromWettest(roomC);
            if (least.length == 0) least = minutes;
            for (int i = 0; i < minutes.length; i++) least[i] = Math.min(least[i], minutes[i]);
        }
        return least;
    }

    /** Minutes from one moisture to another by such a table, at least. */
    private static int least(double[] minutes, double from, double to) {
        if (to >= from) return 0;
        double between = DryTable.at(minutes, to) - DryTable.at(minutes, from);
        if (!(between < LONGEST_KILN_MINUTES)) return LONGEST_KILN_MINUTES;
        return (int) Math.max(0, between * SAFE_DRYING_RATIO - 2 * STEP_MINUTES);
    }

    /** Minutes from one moisture to another by such a table, at most. */
    private static int most(double[] minutes, double from, double to) {
        if (to >= from) return STEP_MINUTES;
        double between = DryTable.at(minutes, to) - DryTable.at(minutes, from);
        if (!(between < LONGEST_KILN_MINUTES)) return LONGEST_KILN_MINUTES;
        return (int) (between / SAFE_DRYING_RATIO + 2 * STEP_MINUTES);
    }

    private Set<Integer> roomsC() {
        Set<Integer> seen = new LinkedHashSet<>();
        Surroundings room = space.setup().air().dryer();
        for (int at = 0; at < space.grid().size(); at++) {
            seen.add((int) Math.round(room.airC(space.grid().minute(at) / 60.0)));
        }
        return seen;
    }

    private void sweep(int stop) {
        for (int at = space.grid().size() - 1; at >= 0; at--) {
            boolean possible = stop <= goal && space.canBegin(stop, at);
            toGo[stop][at] = !possible ? Double.POSITIVE_INFINITY : stop == goal ? 0 : least(stop, at);
        }
    }

    private double least(int stop, int at) {
        Stops stops = space.stops();
        if (stop >= stops.cure()) return overRange(stop, at, slip(stop));
        int level = stop - stops.load();
        return leastFrom(level, at, 0, space.heat().gateRatio(level));
    }

    private Slip slip(int stop) {
        Stops stops = space.stops();
        if (stop == stops.cure()) return space.rules().cureSlip();
        if (stop == stops.off()) return space.rules().derootSlip();
        return space.rules().roastSlip(stops.workMinutes(stop));
    }

    /** From curing to off the kiln, to de-rooting, to roasts: lengths and their cost do not hang on the grain. */
    private double overRange(int stop, int at, Slip slip) {
        boolean cures = stop == space.stops().cure();
        int next = stop + 1;
        boolean rests = next == space.stops().restFrom();
        TimeGrid grid = space.grid();
        int start = grid.minute(at);
        int latest = start + (int) (60 * slip.hardHours());
        if (cures && space.needsSomebody(space.heat().cureLevel())) latest = Math.min(latest, grid.attendedUntil(at));
        int end = Math.min(grid.size(), grid.firstAtOrAfter(latest + 1));
        double least = Double.POSITIVE_INFINITY;
        for (int to = grid.firstAtOrAfter(start + (int) (60 * slip.shortestHours())); to < end; to++) {
            if (to == at || toGo[next][to] == Double.POSITIVE_INFINITY) continue;
            double cost = toGo[next][to]
                    + space.stepCostMinutes(at, next, to)
                    + slip.costMinutes((grid.minute(to) - start) / 60.0)
                    + (rests ? endCost.atMinutes(to) : 0);
            least = Math.min(least, cost);
        }
        return least;
    }

    /** Cost-minutes still to come at least from an act after curing began. */
    double minutes(int stop, int at) {
        return toGo[stop][at];
    }

    /** The same from setting a rung of heat, knowing how wet the slow kiln would be. */
    double fromRung(int stop, int at, double slowRatio) {
        int level = stop - space.stops().load();
        return leastFrom(level, at, slowRatio, slowRatio);
    }

    /** The same from loading a piece at that moisture or wetter, wet basis. */
    double fromLoadAtLeast(int at, double moistureFraction) {
        double least = Double.POSITIVE_INFINITY;
        for (int row = rowOf(moistureFraction); row < classes; row++) least = Math.min(least, fromLoad(at, row));
        return least;
    }

    /** The same from loading a piece of that moisture, wet basis. */
    double fromLoad(int at, double moistureFraction) {
        return fromLoad(at, rowOf(moistureFraction));
    }

    private int rowOf(double moistureFraction) {
        int row = (int) Math.floor((moistureFraction - driestFraction) / CLASS_FRACTION + 1e-9);
        return Math.max(0, Math.min(classes - 1, row));
    }

    private double fromLoad(int at, int row) {
        if (goal == space.stops().load()) return 0;
        if (Double.isNaN(fromLoad[row][at])) fromLoad[row][at] = leastFromLoad(at, row);
        return fromLoad[row][at];
    }

    private double leastFromLoad(int at, int row) {
        if (!space.canBegin(space.stops().load(), at)) return Double.POSITIVE_INFINITY;
        double driest = KilnHeat.ratioOf(driestFraction + row * CLASS_FRACTION);
        double wettest = KilnHeat.ratioOf(driestFraction + (row + 1) * CLASS_FRACTION);
        double least = leastFrom(0, at, driest, row == classes - 1 ? WETTEST_RATIO : wettest);
        if (least == Double.POSITIVE_INFINITY) return least;
        int wet = least(wetFastest, driest, KilnHeat.ratioOf(KilnLegs.STIR_ABOVE_FRACTION));
        return least
                + stirs.costUntilMinutes(space.notYetDrying(at), space.dryingFromMinute(at) + wet, Integer.MAX_VALUE);
    }

    /** Over every raise that can follow: not before the driest piece is let, dearer the longer the wettest one has been. */
    private double leastFrom(int level, int at, double driestRatio, double wettestRatio) {
        Stops stops = space.stops();
        TimeGrid grid = space.grid();
        int start = level == 0 ? space.dryingFromMinute(at) : grid.minute(at);
        double least = Double.POSITIVE_INFINITY;
        int attended = space.needsSomebody(level) ? grid.attendedUntil(at) : Integer.MAX_VALUE;
        for (int next = level + 1; next <= space.heat().cureLevel() && stops.load() + next <= goal; next++) {
            double gate = space.heat().gateRatio(next);
            int opens = start + least(fastest[level], driestRatio, gate);
            int open = start + most(slowest[level], wettestRatio, gate);
            int latest = Math.min(attended, open + (int) (60 * Rules.KILN_WAIT.hardHours()));
            int end = Math.min(grid.size(), grid.firstAtOrAfter(latest + 1));
            double[] after = toGo[stops.load() + next];
            for (int to = Math.max(at + 1, grid.firstAtOrAfter(opens)); to < end; to++) {
                if (after[to] == Double.POSITIVE_INFINITY) continue;
                double waits = space.rules().waitsInTheKiln(Math.max(0, grid.minute(to) - open) / 60.0);
                least = Math.min(least, after[to] + waits + space.stepCostMinutes(at, stops.load() + next, to));
            }
        }
        return least;
    }
}
