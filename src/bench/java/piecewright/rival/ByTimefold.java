package piecewright.rival;

import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.ChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import java.lang.management.ManagementFactory;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.locks.LockSupport;
import org.jspecify.annotations.Nullable;
import piecewright.plan.ActKind;
import piecewright.plan.search.Problem;
import piecewright.plan.search.Problem.Place;

/**
 * Timefold 1.32: local search from the best textbook timetable, one thread, fixed seed, for so much of the processor's
 * time, that a busy machine may not rob it.
 */
final class ByTimefold {
    private static final int STEP_MINUTES = 30;
    private static final long LOOK_NANOS = 5_000_000;

    private final Solver<Timing> solver;
    private final Duration processor;

    ByTimefold(Duration processor) {
        this.processor = processor;
        SolverConfig config = new SolverConfig()
                .withSolutionClass(Timing.class)
                .withEntityClasses(ActTime.class)
                .withEasyScoreCalculatorClass(TimingCost.class)
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withRandomSeed(1L)
                .withPhases(new LocalSearchPhaseConfig().withMoveSelectorConfig(new ChangeMoveSelectorConfig()));
        this.solver = SolverFactory.<Timing>create(config).buildSolver();
    }

    /** Cost of the best timetable found; empty when none reached the goal. */
    OptionalDouble cost(Problem problem) {
        Thread watch = new Thread(watch(Thread.currentThread().getId()), "watch");
        watch.setDaemon(true);
        watch.start();
        Timing best = solver.solve(new Timing(problem, acts(problem)));
        return best.getScore().hardScore() == 0
                ? OptionalDouble.of(-best.getScore().softScore() / 1000.0)
                : OptionalDouble.empty();
    }

    /** Stops the solver when that thread has used its time. */
    private Runnable watch(long thread) {
        var threads = ManagementFactory.getThreadMXBean();
        long until = threads.getThreadCpuTime(thread) + processor.toNanos();
        return () -> {
            while (threads.getThreadCpuTime(thread) < until || !solver.isSolving()) LockSupport.parkNanos(LOOK_NANOS);
            solver.terminateEarly();
        };
    }

    private static List<ActTime> acts(Problem problem) {
        List<Place> places = new Textbook(problem).best();
        List<ActTime> acts = new ArrayList<>();
        int before = 0;
        for (int stop = 0; stop <= problem.goal(); stop++) {
            int number = stop;
            Optional<Place> place =
                    places.stream().filter(one -> one.stop() == number).findFirst();
            int since = before;
            Integer wait = place.map(one -> problem.minute(one) - since).orElse(null);
            before = place.map(problem::minute).orElse(before);
            acts.add(new ActTime(stop, choices(problem, stop, wait), wait));
        }
        return acts;
    }

    /** Waits of an act, minutes, rising: as long as any rule lets it wait, or for the first act all starts. */
    private static List<Integer> choices(Problem problem, int stop, @Nullable Integer one) {
        SortedSet<Integer> choices = new TreeSet<>();
        if (one != null) choices.add(one);
        if (stop == 0) {
            problem.starts().forEach(start -> choices.add(problem.minute(start)));
        } else {
            for (int wait = STEP_MINUTES; wait <= longestMinutes(problem.kind(stop)); wait += STEP_MINUTES)
                choices.add(wait);
        }
        return List.copyOf(choices);
    }

    private static int longestMinutes(ActKind kind) {
        return 60
                * switch (kind) {
                    case DRAIN, SOAK, OFF -> 36;
                    case FLOOR, HEAP, RAISE, CURE, DEROOT -> 72;
                    default -> 14 * 24;
                };
    }
}
