package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;

/**
 * Best-first search (A*) over a {@link Route}. Deterministic: ties are broken by stop (later first), then by the order
 * in which labels were found. Scratch space of one search, used by one thread.
 */
final class BestFirst {
    private final Route route;
    private final Effort effort;
    private final PriorityQueue<Entry> open = new PriorityQueue<>(Entry.ORDER);
    private final CheapestSeen cheapest = new CheapestSeen();
    private final CheapestSeen taken = new CheapestSeen();
    private int found;

    private BestFirst(Route route, Effort effort) {
        this.route = route;
        this.effort = effort;
    }

    /**
     * The cheapest goals, cheapest first, at most so many; empty when none is reachable.
     *
     * @param watcher told each label as it is taken up, for the report when nothing fits
     */
    static List<Label> goals(Route route, int most, Consumer<Label> watcher) {
        return new BestFirst(route, route.effort()).run(most, watcher);
    }

    /** The same; where rivals crowd out every goal, once more with all of them followed. */
    static List<Label> goalsIfAny(Route route, int most, Consumer<Label> watcher) {
        List<Label> goals = goals(route, most, watcher);
        boolean sure = !goals.isEmpty() || route.effort().equals(route.effort().patient());
        return sure ? goals : new BestFirst(route, route.effort().patient()).run(most, watcher);
    }

    private List<Label> run(int most, Consumer<Label> watcher) {
        List<Label> goals = new ArrayList<>();
        route.starts().forEach(this::offer);
        for (int left = effort.mostTaken(); left > 0 && !open.isEmpty() && goals.size() < most; ) {
            Label label = open.remove().label();
            if (cheapest.costOf(route.bucket(label)) < label.costMinutes() || !mayBeTaken(label)) continue;
            left--;
            watcher.accept(label);
            if (route.isGoal(label)) goals.add(label);
            else route.expand(label, this::offer);
        }
        return goals;
    }

    private void offer(Label label) {
        if (!cheapest.improves(route.bucket(label), label.costMinutes())) return;
        double bound = route.boundMinutes(label);
        if (bound < Double.POSITIVE_INFINITY)
            open.add(new Entry(label, label.costMinutes() + effort.eagernessRatio() * bound, found++));
    }

    /** Counts down the places left in the label's cell. */
    private boolean mayBeTaken(Label label) {
        if (effort.mostPerCell() == Integer.MAX_VALUE) return true;
        long cell = route.cell(label);
        double left = taken.costOf(cell);
        if (left == Double.POSITIVE_INFINITY) left = effort.mostPerCell();
        if (left <= 0) return false;
        taken.improves(cell, left - 1);
        return true;
    }

    private record Entry(Label label, double totalMinutes, int order) {
        static final Comparator<Entry> ORDER = (one, other) -> {
            int byTotal = Double.compare(one.totalMinutes, other.totalMinutes);
            if (byTotal != 0) return byTotal;
            int byStop = Integer.compare(other.label.stop(), one.label.stop());
            return byStop != 0 ? byStop : Integer.compare(one.order, other.order);
        };
    }
}
