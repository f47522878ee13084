package piecewright.rival;

import java.lang.management.ManagementFactory;
import java.util.OptionalDouble;
import java.util.function.Function;
import piecewright.plan.search.Problem;

/**
 * One way to solve problems.
 *
 * @param solver cost of the best plan found, cost-minutes; empty when none was
 * @param households on how many of the first households it runs
 */
record Rival(String name, Function<Problem, OptionalDouble> solver, int households) {
    Rival(String name, Function<Problem, OptionalDouble> solver) {
        this(name, solver, Integer.MAX_VALUE);
    }

    /** Solves in this thread, by the clock and by what the thread took of the processor. */
    Run solve(Problem problem) {
        var threads = ManagementFactory.getThreadMXBean();
        long cpu = threads.getCurrentThreadCpuTime();
        long wall = System.nanoTime();
        OptionalDouble cost = solver.apply(problem);
        double wallMs = (System.nanoTime() - wall) / 1e6;
        return new Run(
                name, cost.orElse(Double.POSITIVE_INFINITY), (threads.getCurrentThreadCpuTime() - cpu) / 1e6, wallMs);
    }
}
