package piecewright.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import piecewright.belief.Belief;
import piecewright.belief.Interval;
import piecewright.learn.Estimate.Judged;
import piecewright.learn.LeastSquares.Solution;
import piecewright.learn.Verdict.Cause;

/**
 * The most probable values of some unknowns, given what was believed and what was observed. Pure; the order of the
 * observations does not matter.
 */
public final class Estimator {
    /**
     * Judgement: an observation further than this many standard errors from what all the others and the prior foretell
     * is not learned from; 2 points of moisture at the usual .5, as practice rejects a weighing.
     */
    public static final double GATE_SD = 4;

    private Estimator() {}

    /** The same for a batch. */
    public static Estimate estimate(Belief prior, Rerun batch) {
        return estimate(prior, batch, batch.observations());
    }

    /** Learns from every observation that the others can explain. */
    public static Estimate estimate(Belief prior, Prediction prediction, List<Observation> observations) {
        if (prior.unknowns().isEmpty() || observations.isEmpty()) return new Estimate(prior, prior, List.of());
        LeastSquares squares = new LeastSquares(prior, prediction, observations);
        boolean[] used = new boolean[observations.size()];
        Arrays.fill(used, true);
        Solution solution = squares.solved(used);
        for (int worst = worst(observations, solution, used); worst >= 0; ) {
            used[worst] = false;
            solution = squares.solved(used);
            worst = worst(observations, solution, used);
        }
        boolean[] kept = Arrays.copyOf(used, used.length);
        List<Judged> judged = new ArrayList<>();
        for (int i = 0; i < kept.length; i++) {
            Cause cause =
                    OtherUnit.fits(observations.get(i), solution.figures()[i]) ? Cause.OTHER_UNIT : Cause.UNEXPLAINED;
            Verdict verdict = kept[i] ? new Verdict.LearnedFrom() : new Verdict.Questioned(cause);
            judged.add(new Judged(observations.get(i), expected(observations.get(i), solution, i), verdict));
        }
        return new Estimate(prior, solution.posterior(), judged);
    }

    /** Index of the observation that the others explain least, if that is too little; −1 for none. */
    private static int worst(List<Observation> observations, Solution solution, boolean[] used) {
        int worst = -1;
        double most = GATE_SD;
        for (int i = 0; i < used.length; i++) {
            if (!used[i]) continue;
            double deviations = surprise(observations.get(i), solution.figures()[i], solution.figureSds()[i]);
            if (deviations > most) {
                most = deviations;
                worst = i;
            }
        }
        return worst;
    }

    /**
     * How many standard errors an observation lies from what all the others foretell: its residual r over
     * sd·√(1 − h), where h is the share of it that the fit took from the observation itself.
     */
    private static double surprise(Observation observation, double figure, double figureSd) {
        Figure kind = observation.figure();
        double residual = kind.compared(observation.value()) - kind.compared(figure);
        double openShare = Math.max(1e-6, 1 - figureSd * figureSd / (observation.sd() * observation.sd()));
        return Math.abs(residual) / (observation.sd() * Math.sqrt(openShare));
    }

    private static Interval expected(Observation observation, Solution solution, int i) {
        Figure kind = observation.figure();
        double middle = kind.compared(solution.figures()[i]);
        double reach = Interval.TENTH_SD * solution.figureSds()[i];
        return new Interval(kind.figure(middle - reach), kind.figure(middle), kind.figure(middle + reach));
    }
}
