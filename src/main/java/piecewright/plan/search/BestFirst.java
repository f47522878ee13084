package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

/**
 * Best-first search (A*) over a {@link Route}. Deterministic: ties are broken by stop (later first), then by the order
 * in which labels were found.
 */
final class BestFirst {

    private BestFirst() {}

    /**
     * The cheapest goals, cheapest first, at most so many; empty when none is reachable.
     *
     * @param furthest told each label as it is taken up, for the report when nothing fits
     */
    static List<Label> goals(Route route, int most, java.util.function.Consumer<Label> furthest) {
        PriorityQueue<Entry> open = new PriorityQueue<>(Entry.ORDER);
        Map<Long, Double> cheapest = new HashMap<>();
        List<Label> goals = new ArrayList<>();
        int[] found = {0};
        java.util.function.Consumer<Label> offer = label -> {
            double bound = route.boundMinutes(label);
            if (bound == Double.POSITIVE_INFINITY) return;
            Double known = cheapest.get(route.bucket(label));
            if (known != null && known <= label.costMinutes()) return;
            cheapest.put(route.bucket(label), label.costMinutes());
            open.add(new Entry(label, label.costMinutes() + bound, found[0]++));
        };
        route.starts().forEach(offer);
        while (!open.isEmpty() && goals.size() < most) {
            Label label = open.remove().label();
            if (cheapest.getOrDefault(route.bucket(label), Double.MAX_VALUE) < label.costMinutes()) continue;
            furthest.accept(label);
            if (route.isGoal(label)) {
                goals.add(label);
            } else {
                route.expand(label, offer);
            }
        }
        return goals;
    }

    private record Entry(Label label, double totalMinutes, int order) {
        static final Comparator<Entry> ORDER = Comparator.comparingDouble(Entry::totalMinutes)
                .thenComparing(
                        Comparator.comparingInt((Entry entry) -> entry.label().stop())
                                .reversed())
                .thenComparingInt(Entry::order);
    }
}
