package piecewright.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * A route written out as a table: every label that can be reached and leads to a goal is a node, what follows it its
 * arcs. Labels of one bucket are one node, whose grain is that of the cheapest; time only runs forward, so that label
 * is known before the node's own arcs are written. Node 0 lies before all starts.
 */
final class Tabled {
    /** Arcs cost whole thousandths of a cost-minute. */
    static final double PRICES_PER_COST_MINUTE = 1000;
    /** Number of the node before all starts. */
    static final int BEFORE = 0;

    private final List<Node> nodes;

    private Tabled(List<Node> nodes) {
        this.nodes = nodes;
    }

    /** Empty when writing it takes more arcs than that. */
    static Optional<Tabled> of(Route route, int mostArcs) {
        return new Writing(route).written(mostArcs).map(Tabled::leadingToGoals);
    }

    private static Tabled leadingToGoals(List<Node> inTimeOrder) {
        for (int i = inTimeOrder.size() - 1; i >= 0; i--) inTimeOrder.get(i).dropDeadArcs();
        List<Node> leading = new ArrayList<>();
        for (Node node : inTimeOrder) {
            if (!leading.isEmpty() && !node.leads()) continue;
            node.number = leading.size();
            leading.add(node);
        }
        return new Tabled(leading);
    }

    int size() {
        return nodes.size();
    }

    /** Arcs of the whole table. */
    int arcs() {
        return nodes.stream().mapToInt(node -> node.arcs.size()).sum();
    }

    /** Arcs of a node. */
    int arcs(int node) {
        return nodes.get(node).arcs.size();
    }

    /** The node an arc leads to. */
    int to(int node, int arc) {
        return nodes.get(node).arcs.get(arc).to.number;
    }

    /** What an arc costs, thousandths of a cost-minute. */
    int price(int node, int arc) {
        return nodes.get(node).arcs.get(arc).price;
    }

    boolean goal(int node) {
        return nodes.get(node).goal;
    }

    /** Label of a node that is not before all starts. */
    Label label(int node) {
        return nodes.get(node).label;
    }

    private record Arc(Node to, int price) {}

    private static final class Node {
        final boolean goal;
        Label label;
        int number;
        List<Arc> arcs = new ArrayList<>(0);

        Node(Label label, boolean goal) {
            this.label = label;
            this.goal = goal;
        }

        boolean leads() {
            return goal || !arcs.isEmpty();
        }

        void dropDeadArcs() {
            arcs.removeIf(arc -> !arc.to().leads());
        }

        static final Comparator<Node> IN_TIME_ORDER =
                Comparator.comparingInt((Node node) -> node.label.at()).thenComparingInt(node -> node.number);
    }

    /** The table while it is written. */
    private static final class Writing {
        private final Route route;
        private final Map<Long, Node> byBucket = new HashMap<>();
        private final PriorityQueue<Node> toWrite = new PriorityQueue<>(Node.IN_TIME_ORDER);
        private int arcs;

        Writing(Route route) {
            this.route = route;
        }

        Optional<List<Node>> written(int mostArcs) {
            List<Node> written = new ArrayList<>();
            Node before = new Node(null, false);
            written.add(before);
            for (Label start : route.starts()) add(before, start, start.costMinutes());
            while (!toWrite.isEmpty()) {
                Node node = toWrite.remove();
                written.add(node);
                Label label = node.label;
                if (!node.goal) route.expand(label, next -> add(node, next, next.costMinutes() - label.costMinutes()));
                if (arcs > mostArcs) return Optional.empty();
            }
            return Optional.of(written);
        }

        private void add(Node from, Label next, double costMinutes) {
            Node to = byBucket.computeIfAbsent(route.bucket(next), bucket -> {
                Node made = new Node(next, route.isGoal(next));
                made.number = byBucket.size();
                toWrite.add(made);
                return made;
            });
            if (next.costMinutes() < to.label.costMinutes()) to.label = next;
            from.arcs.add(new Arc(to, (int) Math.round(PRICES_PER_COST_MINUTE * costMinutes)));
            arcs++;
        }
    }
}
