package piecewright.rival;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.EasyScoreCalculator;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.plan.search.Problem;
import piecewright.plan.search.Problem.Place;

/**
 * Timefold's score: hard, how many stops short of the goal; soft, our own cost in thousandths of a cost-minute. An act
 * falls on the legal candidate nearest to what its wait says, and one that cannot follow at all is passed over: kind to the
 * solver, which so need not find legal instants itself.
 */
public class TimingCost implements EasyScoreCalculator<Timing, HardSoftLongScore> {
    @Override
    public HardSoftLongScore calculateScore(Timing timing) {
        Problem problem = timing.getProblem();
        Optional<Place> place = Optional.empty();
        for (ActTime act : timing.getActs()) {
            if (act.getWaitMinutes() == null) continue;
            List<Place> next = place.map(problem::after).orElse(problem.starts());
            int minute = place.map(problem::minute).orElse(0) + act.getWaitMinutes();
            Optional<Place> taken = nearest(problem, next, act.getStop(), minute);
            if (taken.isPresent()) place = taken;
        }
        int reached = place.map(Place::stop).orElse(-1);
        double costMinutes = place.map(Place::costMinutes).orElse(0.0);
        return HardSoftLongScore.of(reached - problem.goal(), -Math.round(1000 * costMinutes));
    }

    private static Optional<Place> nearest(Problem problem, List<Place> next, int stop, int minute) {
        return next.stream()
                .filter(one -> one.stop() == stop)
                .min(Comparator.comparingInt(one -> Math.abs(problem.minute(one) - minute)));
    }
}
