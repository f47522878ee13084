package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;

/** The estimator where the answer is known by other means. */
class EstimatorTest {
    private static final Instant AT = Instant.parse("2031-02-03T08:00:00Z");
    private static final Unknown DIAL = new Unknown(Trait.DIAL_OFFSET, "oven");
    private static final Unknown OTHER_DIAL = new Unknown(Trait.DIAL_OFFSET, "box");
    private static final Unknown RATE = new Unknown(Trait.STEEP_RATE, "lot");

    private static Belief dials(double sdK, double otherSdK) {
        return Belief.independent(
                List.of(new Belief.Single(DIAL, 1, sdK), new Belief.Single(OTHER_DIAL, -2, otherSdK)));
    }

    private static Observation reading(double value, double sd) {
        return new Observation("r", AT, Figure.GRAIN_TEMPERATURE, value, sd);
    }

    /** Sums of both dials with weights: linear, so the answer is a closed form. */
    private static Prediction sums(double[][] weights) {
        return Prediction.of(values -> {
            double[] figures = new double[weights.length];
            for (int i = 0; i < weights.length; i++) {
                figures[i] = weights[i][0] * values.of(Trait.DIAL_OFFSET, "oven", 0)
                        + weights[i][1] * values.of(Trait.DIAL_OFFSET, "box", 0);
            }
            return figures;
        });
    }

    /** Two unknowns, prior 1 ± 2 and −2 ± 3, three readings: solved by hand through the 2 × 2 normal equations. */
    @Test
    void aLinearProblemHasItsClosedFormAnswer() {
        double[][] weights = {{1, 0}, {1, 1}, {0.5, -1}};
        double[] read = {3, 0.5, 2.2};
        double[] sd = {1, 0.5, 2};
        Belief prior = dials(2, 3);
        List<Observation> observations = new ArrayList<>();
        double[][] a = {{1 / 4.0, 0}, {0, 1 / 9.0}};
        double[] b = {1 / 4.0, -2 / 9.0};
        for (int i = 0; i < 3; i++) {
            observations.add(reading(read[i], sd[i]));
            for (int j = 0; j < 2; j++) {
                for (int k = 0; k < 2; k++) a[j][k] += weights[i][j] * weights[i][k] / (sd[i] * sd[i]);
                b[j] += weights[i][j] * read[i] / (sd[i] * sd[i]);
            }
        }
        double determinant = a[0][0] * a[1][1] - a[0][1] * a[1][0];
        double first = (a[1][1] * b[0] - a[0][1] * b[1]) / determinant;
        double second = (a[0][0] * b[1] - a[1][0] * b[0]) / determinant;
        Belief posterior =
                Estimator.estimate(prior, sums(weights), observations).posterior();
        assertEquals(first, posterior.value(DIAL), 1e-4);
        assertEquals(second, posterior.value(OTHER_DIAL), 1e-4);
        assertEquals(Math.sqrt(a[1][1] / determinant), posterior.axisSd(DIAL), 1e-6);
        assertEquals(Math.sqrt(a[0][0] / determinant), posterior.axisSd(OTHER_DIAL), 1e-6);
        assertEquals(-a[0][1] / Math.sqrt(a[0][0] * a[1][1]), posterior.correlation(DIAL, OTHER_DIAL), 1e-6);
    }

    @Test
    void learningInTwoBatchesIsLearningAtOnce() {
        double[][] weights = {{1, 0}, {1, 1}, {0.5, -1}};
        List<Observation> observations = List.of(reading(3, 1), reading(0.5, 0.5), reading(2.2, 2));
        Belief prior = dials(2, 3);
        Belief once = Estimator.estimate(prior, sums(weights), observations).posterior();
        Belief half = Estimator.estimate(
                        prior, sums(new double[][] {weights[0], weights[1]}), observations.subList(0, 2))
                .posterior();
        Belief twice = Estimator.estimate(half, sums(new double[][] {weights[2]}), observations.subList(2, 3))
                .posterior();
        assertEquals(once.value(DIAL), twice.value(DIAL), 1e-4);
        assertEquals(once.axisSd(OTHER_DIAL), twice.axisSd(OTHER_DIAL), 1e-6);
        assertEquals(once.correlation(DIAL, OTHER_DIAL), twice.correlation(DIAL, OTHER_DIAL), 1e-5);
    }

    @Test
    void theOrderOfObservationsDoesNotMatter() {
        for (int seed = 0; seed < 20; seed++) {
            Random random = new Random(seed);
            List<Integer> order = new ArrayList<>(List.of(0, 1, 2, 3, 4, 5));
            double[][] weights = new double[6][];
            List<Observation> observations = new ArrayList<>();
            for (int i = 0; i < 6; i++) {
                weights[i] = new double[] {random.nextGaussian(), random.nextGaussian()};
                observations.add(reading(3 * random.nextGaussian(), 0.3 + random.nextDouble()));
            }
            Estimate straight = Estimator.estimate(dials(2, 3), sums(weights), observations);
            Collections.shuffle(order, random);
            Estimate shuffled = Estimator.estimate(
                    dials(2, 3),
                    sums(order.stream().map(i -> weights[i]).toArray(double[][]::new)),
                    order.stream().map(observations::get).toList());
            assertEquals(straight.posterior().value(DIAL), shuffled.posterior().value(DIAL), 1e-4);
            for (int i = 0; i < 6; i++) {
                assertEquals(
                        straight.observations().get(order.get(i)).verdict(),
                        shuffled.observations().get(i).verdict());
            }
        }
    }

    @Test
    void oneObservationMoreNeverWidensALinearAnswer() {
        for (int seed = 0; seed < 30; seed++) {
            Random random = new Random(seed);
            double[][] weights = new double[8][];
            List<Observation> observations = new ArrayList<>();
            double before = 2;
            for (int i = 0; i < 8; i++) {
                weights[i] = new double[] {random.nextGaussian(), random.nextGaussian()};
                observations.add(reading(weights[i][0] - 2 * weights[i][1], 0.5 + random.nextDouble()));
                double[][] some = java.util.Arrays.copyOf(weights, i + 1);
                double sd = Estimator.estimate(dials(2, 3), sums(some), observations)
                        .posterior()
                        .axisSd(DIAL);
                assertTrue(sd <= before + 1e-9, "seed " + seed + ", observation " + i);
                before = sd;
            }
        }
    }

    /** Not linear: the covariance against the curvature of the sum of squares, by second differences by hand. */
    @Test
    void theCovarianceIsTheInverseOfTheCurvature() {
        Belief prior = Belief.independent(List.of(new Belief.Single(RATE, 1.2, 0.3)));
        Prediction prediction = Prediction.of(values -> new double[] {
            40 + 6 * Math.log(values.of(Trait.STEEP_RATE, "lot", 0)), 30 / values.of(Trait.STEEP_RATE, "lot", 0)
        });
        List<Observation> observations = List.of(reading(42, 0.5), reading(22.4, 0.5));
        Belief posterior = Estimator.estimate(prior, prediction, observations).posterior();
        double at = posterior.positions()[0];
        double step = 1e-3;
        double curvature =
                (cost(prediction, at + step) - 2 * cost(prediction, at) + cost(prediction, at - step)) / (step * step);
        assertTrue(cost(prediction, at) <= cost(prediction, at + 1e-3));
        assertTrue(cost(prediction, at) <= cost(prediction, at - 1e-3));
        assertEquals(1 / Math.sqrt(curvature / 2), posterior.axisSd(RATE), 0.02 * posterior.axisSd(RATE));
    }

    private static double cost(Prediction prediction, double logRate) {
        double[] figures = prediction
                .at(new Values(List.of(RATE), new double[] {Math.exp(logRate)}))
                .figures();
        double prior = (logRate - Math.log(1.2)) / 0.3;
        double first = (42 - figures[0]) / 0.5;
        double second = (22.4 - figures[1]) / 0.5;
        return prior * prior + first * first + second * second;
    }

    @Test
    void anObservationNothingExplainsIsSetAsideAndTeachesNothing() {
        double[][] weights = {{1, 0}, {1, 0}, {1, 0}, {0, 1}};
        List<Observation> with = List.of(reading(3, 0.5), reading(3.4, 0.5), reading(22, 0.5), reading(-1, 1));
        List<Observation> without = List.of(with.get(0), with.get(1), with.get(3));
        Estimate estimate = Estimator.estimate(dials(2, 3), sums(weights), with);
        assertEquals(
                List.of(
                        new Verdict.LearnedFrom(),
                        new Verdict.LearnedFrom(),
                        new Verdict.Questioned(Verdict.Cause.UNEXPLAINED),
                        new Verdict.LearnedFrom()),
                estimate.observations().stream().map(Estimate.Judged::verdict).toList());
        Belief clean = Estimator.estimate(dials(2, 3), sums(new double[][] {{1, 0}, {1, 0}, {0, 1}}), without)
                .posterior();
        assertEquals(clean.value(DIAL), estimate.posterior().value(DIAL), 1e-6);
        assertEquals(clean.axisSd(DIAL), estimate.posterior().axisSd(DIAL), 1e-9);
    }

    /** One reading alone: 9 K off a prior of 8 K is news, not a mistake; 9 K off a prior of 1 K is one. */
    @Test
    void whatIsStrangeDependsOnWhatWasBelieved() {
        double[][] weights = {{1, 0}};
        List<Observation> one = List.of(reading(10, 0.5));
        Verdict unsure = Estimator.estimate(dials(8, 1), sums(weights), one)
                .observations()
                .get(0)
                .verdict();
        Verdict sure = Estimator.estimate(dials(1, 1), sums(weights), one)
                .observations()
                .get(0)
                .verdict();
        assertEquals(new Verdict.LearnedFrom(), unsure);
        assertEquals(new Verdict.Questioned(Verdict.Cause.UNEXPLAINED), sure);
    }
}
