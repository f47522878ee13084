package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import piecewright.plan.Slip;

/**
 * The cheapest run of turnings (or stirrings) between two instants: a shortest path over candidates in which no gap is
 * longer than its hard limit. It depends on time alone, not on the grain, so it is kept per start. Scratch space of one
 * search, used by one thread.
 */
final class TurnChains {
    private final TimeGrid grid;
    private final Gaps gaps;
    private final Turning turning;
    private final int longestMinutes;
    private final @Nullable Costs[] known;
    private final int longestGapMinutes;
    private final double[][] gapCost;

    /** Cost of leaving the bed alone from one minute to a later one, cost-minutes, infinite beyond hard. */
    interface Gaps {
        double costMinutes(int fromMinute, int untilMinute);

        /** The same rule for a bed laid at that minute, where its age matters. */
        default Gaps ofLaidAt(int startMinute) {
            return this;
        }
    }

    /**
     * One turning.
     *
     * @param workMinutes minutes of work
     * @param soonestMinutes none comes sooner after the bed was laid or turned
     * @param movedCostMinutes what it costs besides to put it at a minute, cost-minutes
     */
    record Turning(int workMinutes, int soonestMinutes, IntToDoubleFunction movedCostMinutes) {}

    /**
     * @param longestGapMinutes no gap is ever longer
     * @param longestMinutes no chain is ever longer
     */
    TurnChains(TimeGrid grid, Gaps gaps, Turning turning, int longestGapMinutes, int longestMinutes) {
        this.grid = grid;
        this.gaps = gaps;
        this.turning = turning;
        this.longestMinutes = longestMinutes;
        this.known = new Costs[grid.size()];
        this.gapCost = new double[grid.size()][0];
        this.longestGapMinutes = longestGapMinutes;
    }

    /** Costs of leaving the bed alone from a candidate, by places after it, as far as a gap may reach. */
    private double[] gapsFrom(int from, Gaps rule) {
        double[] known = gapCost[from];
        if (known.length > 0 && rule == gaps) return known;
        int end = Math.max(from + 1, grid.firstAtOrAfter(grid.minute(from) + longestGapMinutes + 1));
        double[] made = new double[end - from];
        for (int to = from + 1; to < end; to++) made[to - from] = rule.costMinutes(grid.minute(from), grid.minute(to));
        if (rule == gaps) gapCost[from] = made;
        return made;
    }

    /** A gap rule whose limits follow the mean of a temperature over the gap. */
    static Gaps byTemperature(
            piecewright.plan.Limits limits, double preferredHours, IntToDoubleFunction degreeMinutes) {
        return (from, until) -> {
            double meanC = (degreeMinutes.applyAsDouble(until) - degreeMinutes.applyAsDouble(from)) / (until - from);
            double soft = limits.softHours(meanC);
            double latest = Math.min(preferredHours, soft);
            return new Slip(0, 0, latest, soft, limits.hardHours(meanC)).costMinutes((until - from) / 60.0);
        };
    }

    /** Cost of everything between an act at one candidate and an act at a later one; infinite if it cannot be. */
    double costMinutes(int from, int to) {
        double[] arrive = costsFrom(from).arrive();
        return to - from < arrive.length ? arrive[to - from] : Double.POSITIVE_INFINITY;
    }

    /**
     * Cost of turnings from a candidate until a minute after which none is needed any more.
     *
     * @param nextMinute when the next act begins: all are over by then
     */
    double costUntilMinutes(int from, int untilMinute, int nextMinute) {
        double[] turned = costsFrom(from).turned();
        int last = lastTurn(from, untilMinute, nextMinute, turned);
        return last < 0 ? Double.POSITIVE_INFINITY : turned[last - from] + gap(last, untilMinute);
    }

    /** The turnings themselves, as candidates in time order, for an act at {@code from} and one at {@code to}. */
    List<Integer> turns(int from, int to) {
        Chain chain = walk(from);
        return back(chain, from, chain.before[to - from]);
    }

    /** The turnings themselves until a minute after which none is needed any more. */
    List<Integer> turnsUntil(int from, int untilMinute, int nextMinute) {
        Chain chain = walk(from);
        return back(chain, from, Math.max(from, lastTurn(from, untilMinute, nextMinute, chain.turned)));
    }

    /** The last turning of the cheapest run until that minute; negative when there is none. */
    private int lastTurn(int from, int untilMinute, int nextMinute, double[] turned) {
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        int end = Math.min(from + turned.length, grid.firstAtOrAfter(untilMinute));
        for (int last = from; last < end; last = grid.nextCoarse(last + 1)) {
            if (turned[last - from] >= least || !isOver(from, last, nextMinute)) continue;
            double cost = turned[last - from] + gap(last, untilMinute);
            if (cost < least) {
                least = cost;
                best = last;
            }
        }
        return best;
    }

    /** Whether the turning, if it is one and not the start, is done by that minute. */
    private boolean isOver(int from, int last, int minute) {
        return last == from || grid.minute(last) + turning.workMinutes() <= minute;
    }

    private double gap(int last, int untilMinute) {
        return gaps.costMinutes(grid.minute(last), untilMinute);
    }

    private static List<Integer> back(Chain chain, int from, int last) {
        List<Integer> turns = new ArrayList<>();
        for (int at = last; at > from; at = chain.beforeTurning[at - from]) turns.add(at);
        Collections.reverse(turns);
        return turns;
    }

    private Costs costsFrom(int from) {
        Costs costs = known[from];
        if (costs == null) {
            costs = Costs.of(walk(from));
            known[from] = costs;
        }
        return costs;
    }

    private Chain walk(int from) {
        int end = grid.firstAtOrAfter(grid.minute(from) + longestMinutes + 1);
        Chain chain = new Chain(end - from);
        Gaps rule = gaps.ofLaidAt(grid.minute(from));
        chain.turned[0] = 0;
        for (int last = from; last < end; last = grid.nextCoarse(last + 1)) {
            if (last > from) chain.turned[last - from] = turnedHere(chain, from, last);
            double soFar = chain.turned[last - from];
            if (soFar == Double.POSITIVE_INFINITY) continue;
            double[] gapsHere = gapsFrom(last, rule);
            int reach = Math.min(end, last + gapsHere.length);
            for (int to = last + 1; to < reach; to++) {
                double cost = soFar + gapsHere[to - last];
                if (isOver(from, last, grid.minute(to))) chain.offer(to - from, last, cost);
                boolean soon =
                        grid.minute(to) - grid.minute(last) < Math.max(turning.soonestMinutes(), turning.workMinutes());
                if (!soon) chain.offerTurning(to - from, last, cost);
            }
        }
        return chain;
    }

    private double turnedHere(Chain chain, int from, int at) {
        if (!grid.coarse(at) || grid.night(at) || !grid.fits(at, turning.workMinutes()))
            return Double.POSITIVE_INFINITY;
        return chain.arriveTurning[at - from]
                + turning.workMinutes()
                + turning.movedCostMinutes().applyAsDouble(grid.minute(at))
                + grid.unsociableCostMinutes(at);
    }

    /** What is kept of a chain: cost of the next act, or of another turning, so many places later. */
    private record Costs(double[] arrive, double[] turned) {
        static Costs of(Chain chain) {
            return new Costs(cut(chain.arrive), cut(chain.turned));
        }

        private static double[] cut(double[] costs) {
            int end = costs.length;
            while (end > 0 && costs[end - 1] == Double.POSITIVE_INFINITY) end--;
            return Arrays.copyOf(costs, end);
        }
    }

    private static final class Chain {
        final double[] arrive;
        final double[] turned;
        final int[] before;
        final double[] arriveTurning;
        final int[] beforeTurning;

        Chain(int size) {
            arrive = new double[size];
            turned = new double[size];
            before = new int[size];
            arriveTurning = new double[size];
            beforeTurning = new int[size];
            Arrays.fill(arriveTurning, Double.POSITIVE_INFINITY);
            Arrays.fill(arrive, Double.POSITIVE_INFINITY);
            Arrays.fill(turned, Double.POSITIVE_INFINITY);
        }

        /** The next act here, its last turning there. */
        void offer(int here, int last, double costMinutes) {
            if (costMinutes >= arrive[here]) return;
            arrive[here] = costMinutes;
            before[here] = last;
        }

        /** Another turning here, the one before it there. */
        void offerTurning(int here, int last, double costMinutes) {
            if (costMinutes >= arriveTurning[here]) return;
            arriveTurning[here] = costMinutes;
            beforeTurning[here] = last;
        }
    }
}
