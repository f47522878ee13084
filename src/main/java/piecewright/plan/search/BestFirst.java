package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import java.util.function.Consumer;
import piecewright.plan.Pace;
import piecewright.plan.Watch;

/**
 * Best-first search (A*) over a {@link Route}. Deterministic: ties are broken by stop (later first), then by the order
 * in which labels were found. Scratch space of one search, used by one thread.
 */
final class BestFirst {
    /** Judgement: labels between two looks at whether anybody still waits: some tenths of a millisecond each. */
    private static final int LABELS_PER_LOOK = 64;

    private final Route route;
    private final Effort effort;
    private final PriorityQueue<Entry> open = new PriorityQueue<>(Entry.ORDER);
    private final CheapestSeen cheapest = new CheapestSeen();
    private final CheapestSeen taken = new CheapestSeen();
    private final Watch watch;
    private int waysLeft;
    private boolean crowded;
    private int found;

    private BestFirst(Route route, Effort effort, Pace pace) {
        this.route = route;
        this.effort = effort;
        this.watch = pace.watch();
        this.waysLeft = pace.mostWays();
    }

    /**
     * The cheapest goals, cheapest first, at most so many; empty when none is reachable.
     *
     * @param watcher told each label as it is taken up, for the report when nothing fits
     */
    static List<Label> goals(Route route, int most, Consumer<Label> watcher, Pace pace) {
        return new BestFirst(route, route.effort(), pace).run(most, watcher);
    }

    /** The same; where rivals crowd out every goal, once more with all of them followed, as long as its pace lets it. */
    static List<Label> goalsIfAny(Route route, int most, Consumer<Label> watcher, Pace pace) {
        BestFirst first = new BestFirst(route, route.effort(), pace);
        List<Label> goals = first.run(most, watcher);
        boolean any = pace.belowMinutes() == Double.POSITIVE_INFINITY;
        boolean sure = !goals.isEmpty() || !any || !first.crowded || first.waysLeft <= 0;
        if (sure) return goals;
        return new BestFirst(route, route.effort().patient(), new Pace(pace.watch(), first.waysLeft))
                .run(most, watcher);
    }

    private List<Label> run(int most, Consumer<Label> watcher) {
        List<Label> goals = new ArrayList<>();
        int ways = waysLeft;
        route.starts().forEach(this::offer);
        int left = effort.mostTaken();
        while (left > 0 && waysLeft > 0 && !open.isEmpty() && goals.size() < most) {
            Label label = open.remove().label();
            if (cheapest.costOf(route.bucket(label)) < label.costMinutes() || !mayBeTaken(label)) continue;
            left--;
            if (left % LABELS_PER_LOOK == 0) watch.looking();
            watcher.accept(label);
            if (route.isGoal(label)) goals.add(label);
            else route.expand(label, this::offer);
        }
        watch.looked(ways - waysLeft);
        return goals;
    }

    private void offer(Label label) {
        waysLeft--;
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
        if (left <= 0) {
            crowded = true;
            return false;
        }
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
