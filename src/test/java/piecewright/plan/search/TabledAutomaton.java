package piecewright.plan.search;

import gnu.trove.set.hash.TIntHashSet;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.chocosolver.solver.constraints.nary.automata.FA.ICostAutomaton;
import org.chocosolver.solver.constraints.nary.automata.FA.utils.Bounds;
import org.chocosolver.solver.constraints.nary.automata.FA.utils.ICounter;

/**
 * A tabled route as an automaton: states are nodes, the letters of a stop say which of the arcs to it is followed, and
 * letter 0 that it is passed over. Letters are told apart by stop, so that they are read in the order of the stops.
 */
final class TabledAutomaton implements ICostAutomaton {
    private static final int PASSED_OVER = 0;

    private final Tabled table;
    private final List<ICounter> price;
    /** By node and letter: the arc, or none. */
    private final List<Map<Integer, Integer>> arcs = new ArrayList<>();
    /** By stop. */
    private final List<Set<Integer>> letters = new ArrayList<>();

    TabledAutomaton(Tabled table, int mostPrice) {
        this.table = table;
        this.price = List.of(new Price(Bounds.makeBounds(0, 0, mostPrice, mostPrice)));
        int most = 0;
        for (int node = 0; node < table.size(); node++) most = Math.max(most, table.arcs(node));
        for (int node = 0; node < table.size(); node++) arcs.add(lettered(node, most));
    }

    private Map<Integer, Integer> lettered(int node, int mostArcs) {
        Map<Integer, Integer> byLetter = new HashMap<>();
        for (int arc = 0; arc < table.arcs(node); arc++) {
            int stop = table.label(table.to(node, arc)).stop();
            int letter = 1 + stop * mostArcs;
            while (byLetter.containsKey(letter)) letter++;
            byLetter.put(letter, arc);
            while (letters.size() <= stop) letters.add(new TreeSet<>(Set.of(PASSED_OVER)));
            letters.get(stop).add(letter);
        }
        return byLetter;
    }

    /** Stops up to the goal. */
    int stops() {
        return letters.size();
    }

    /** What can be said of a stop, rising. */
    int[] letters(int stop) {
        return letters.get(stop).stream().mapToInt(Integer::intValue).toArray();
    }

    private final class Price implements ICounter {
        private final Bounds bounds;

        Price(Bounds bounds) {
            this.bounds = bounds;
        }

        @Override
        public Bounds bounds() {
            return bounds;
        }

        @Override
        public double cost(int layer, int letter) {
            throw new UnsupportedOperationException("the price of an arc depends on its node");
        }

        @Override
        public double cost(int layer, int letter, int node) {
            return letter == PASSED_OVER ? 0 : table.price(node, arcs.get(node).get(letter));
        }
    }

    @Override
    public int delta(int node, int letter) {
        if (letter == PASSED_OVER) return node;
        Integer arc = arcs.get(node).get(letter);
        return arc == null ? -1 : table.to(node, arc);
    }

    @Override
    public void delta(int node, int letter, TIntHashSet next) {
        int to = delta(node, letter);
        if (to >= 0) next.add(to);
    }

    @Override
    public int getInitialState() {
        return Tabled.BEFORE;
    }

    @Override
    public boolean isFinal(int node) {
        return table.goal(node);
    }

    @Override
    public boolean isNotFinal(int node) {
        return !isFinal(node);
    }

    @Override
    public int getNbStates() {
        return table.size();
    }

    @Override
    public boolean run(int[] word) {
        int node = Tabled.BEFORE;
        for (int letter : word) {
            node = delta(node, letter);
            if (node < 0) return false;
        }
        return isFinal(node);
    }

    @Override
    public List<int[]> getTransitions() {
        List<int[]> all = new ArrayList<>();
        for (int node = 0; node < table.size(); node++) all.addAll(getTransitions(node));
        return all;
    }

    @Override
    public List<int[]> getTransitions(int node) {
        List<int[]> all = new ArrayList<>();
        arcs.get(node).forEach((letter, arc) -> all.add(new int[] {node, table.to(node, arc), letter}));
        return all;
    }

    @Override
    public double getCost(int layer, int letter) {
        return price.get(0).cost(layer, letter);
    }

    @Override
    public double getCostByState(int layer, int letter, int node) {
        return price.get(0).cost(layer, letter, node);
    }

    @Override
    public double getCostByResource(int layer, int letter, int resource) {
        return price.get(resource).cost(layer, letter);
    }

    @Override
    public double getCostByResourceAndState(int layer, int letter, int resource, int node) {
        return price.get(resource).cost(layer, letter, node);
    }

    @Override
    public int getNbResources() {
        return price.size();
    }

    @Override
    public List<ICounter> getCounters() {
        return price;
    }

    @Override
    public ICostAutomaton clone() {
        throw new UnsupportedOperationException("one automaton serves one model");
    }
}
