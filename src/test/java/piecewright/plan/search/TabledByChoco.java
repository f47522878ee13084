package piecewright.plan.search;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.Solver;
import org.chocosolver.solver.search.strategy.Search;
import org.chocosolver.solver.variables.IntVar;

/**
 * A tabled route as choco-solver takes it: one variable per stop, saying which arc leads to it or that it is passed
 * over, under one constraint that the arcs make a way of this cost (costRegular, an automaton whose states are the
 * nodes). Least cost, proven.
 */
final class TabledByChoco {
    private TabledByChoco() {}

    /** The cheapest way found, as labels; what it costs, cost-minutes; whether nothing cheaper is left. */
    record Answer(List<Label> labels, double costMinutes, boolean proven) {}

    /** Empty when no way leads through, or none was found in so many seconds. */
    static Optional<Answer> cheapest(Tabled table, int mostSeconds) {
        if (table.size() == 1) return Optional.empty();
        TabledAutomaton automaton = new TabledAutomaton(table, IntVar.MAX_INT_BOUND);
        Model model = new Model();
        IntVar[] acts = new IntVar[automaton.stops()];
        for (int stop = 0; stop < acts.length; stop++)
            acts[stop] = model.intVar("stop " + stop, automaton.letters(stop));
        IntVar cost = model.intVar("cost", 0, IntVar.MAX_INT_BOUND, true);
        model.costRegular(acts, cost, automaton).post();
        Solver solver = model.getSolver();
        solver.setSearch(Search.inputOrderLBSearch(cost), Search.inputOrderLBSearch(acts));
        solver.limitTime(mostSeconds + "s");
        Solution best = solver.findOptimalSolution(cost, Model.MINIMIZE);
        if (best == null) return Optional.empty();
        List<Label> labels = new ArrayList<>();
        int node = Tabled.BEFORE;
        for (IntVar act : acts) {
            int next = automaton.delta(node, best.getIntVal(act));
            if (next != node) labels.add(table.label(next));
            node = next;
        }
        double costMinutes = best.getIntVal(cost) / Tabled.PRICES_PER_COST_MINUTE;
        return Optional.of(new Answer(labels, costMinutes, !solver.isStopCriterionMet()));
    }
}
