package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;
import piecewright.belief.Values;
import piecewright.process.PieceState;

/** Whole batches, from soak to colour, whose truth is known because it was drawn. */
class BatchLearningTest {
    private static final int SEEDS = 40;

    /** Truth drawn from the prior, readings with the errors they are taken to have: 80 % intervals hold 80 %. */
    @Test
    void intervalsHoldTheTruthAsOftenAsTheySay() {
        Belief prior = MadeUpBatch.prior();
        Rerun batch = MadeUpBatch.whole().rerun();
        int held = 0;
        int questioned = 0;
        double[] squares = new double[prior.unknowns().size()];
        for (int seed = 0; seed < SEEDS; seed++) {
            Random random = new Random(seed);
            Values truth = MadeUpBatch.drawn(prior, random);
            Estimate estimate = Estimator.estimate(prior, MadeUpBatch.read(batch, truth, random));
            for (int j = 0; j < squares.length; j++) {
                Unknown unknown = prior.unknowns().get(j);
                double value = truth.of(unknown.trait(), unknown.item(), 0);
                if (estimate.posterior().interval(unknown).contains(value)) held++;
                double off =
                        unknown.trait().position(value) - estimate.posterior().positions()[j];
                squares[j] += Math.pow(off / prior.axisSd(unknown), 2) / SEEDS;
            }
            questioned += (int) estimate.observations().stream()
                    .filter(each -> each.verdict() instanceof Verdict.Questioned)
                    .count();
        }
        assertEquals(0.8, held / (double) (SEEDS * squares.length), 0.06);
        assertTrue(questioned <= SEEDS * batch.observations().size() / 200, "questioned " + questioned);
        for (Trait told : List.of(Trait.GROWTH_RATE, Trait.FLOOR_DRYING, Trait.AIR_FLOW, Trait.DIAL_OFFSET)) {
            int j = prior.unknowns().stream().map(Unknown::trait).toList().indexOf(told);
            assertTrue(Math.sqrt(squares[j]) < 0.55, told + " is found: " + Math.sqrt(squares[j]));
        }
    }

    @Test
    void theOrderInWhichABatchWasReadDoesNotMatter() {
        Belief prior = MadeUpBatch.prior();
        Random random = new Random(7);
        Rerun read = MadeUpBatch.read(MadeUpBatch.whole().rerun(), MadeUpBatch.drawn(prior, random), random);
        List<Observation> shuffled = new ArrayList<>(read.observations());
        java.util.Collections.shuffle(shuffled, random);
        Rerun other = new Rerun(read.origin(), read.raw(), read.stretches(), shuffled);
        double[] straight = Estimator.estimate(prior, read).posterior().positions();
        double[] mixed = Estimator.estimate(prior, other).posterior().positions();
        for (int j = 0; j < straight.length; j++) {
            assertEquals(
                    straight[j], mixed[j], 0.02 * prior.axisSd(prior.unknowns().get(j)));
        }
    }

    /** What the next run reuses must not change its figures. */
    @Test
    void runningFromTheFirstDifferenceIsRunningFromTheStart() {
        Belief prior = MadeUpBatch.prior();
        Rerun batch = MadeUpBatch.whole().rerun();
        Rerun.Run usual = batch.at(prior.values());
        for (int j = 0; j < prior.unknowns().size(); j++) {
            double[] positions = prior.positions();
            positions[j] += prior.axisSd(prior.unknowns().get(j));
            Values other = prior.valuesAt(positions);
            double[] quick = usual.with(other).figures();
            double[] afresh = batch.at(other).figures();
            double changed = 0;
            for (int i = 0; i < quick.length; i++) {
                assertEquals(afresh[i], quick[i], 0, prior.unknowns().get(j) + ", observation " + i);
                changed += Math.abs(afresh[i] - usual.figures()[i]);
            }
            assertTrue(changed > 0, prior.unknowns().get(j) + " changes something");
        }
    }

    /** Steps of a quarter of an hour against the reference's five minutes, the whole batch through. */
    @Test
    void longerStepsForetellTheSame() {
        Belief prior = MadeUpBatch.prior();
        Rerun batch = MadeUpBatch.whole().rerun();
        double[] quick = batch.at(prior.values()).figures();
        PieceState now = batch.raw().start().state(prior.values());
        for (Stretch stretch : batch.stretches()) {
            double fromHours = hours(stretch.span().from());
            double untilHours = hours(stretch.span().until());
            double startHours = fromHours;
            PieceState begun = stretch.deed().done(prior.values(), now);
            now = stretch.passing().stage(prior.values()).run(begun, startHours, untilHours, (atHours, state) -> {
                for (int i = 0; i < quick.length; i++) {
                    Observation observation = batch.observations().get(i);
                    boolean here = Math.abs(hours(observation.at()) - atHours) < 1e-3 && atHours > startHours;
                    if (here) assertEquals(figure(observation, state, quick[i]), quick[i], tolerance(observation));
                }
            });
        }
    }

    private static double hours(Instant at) {
        return Duration.between(MadeUpBatch.ORIGIN, at).toMillis() / 3_600_000.0;
    }

    private static double figure(Observation observation, PieceState state, double otherwise) {
        return switch (observation.figure()) {
            case WEIGHT -> state.mass().totalKg();
            case MOISTURE -> state.mass().moisture().wetBasisFraction();
            case GRAIN_TEMPERATURE -> state.grainC();
            case ACROSPIRE -> state.growth().growthRatio();
            case COLOUR -> state.kiln().colourEbc();
            case AIR_TEMPERATURE -> otherwise;
        };
    }

    /** A twentieth of the usual error, or less. */
    private static double tolerance(Observation observation) {
        return switch (observation.figure()) {
            case WEIGHT -> 0.002;
            case MOISTURE, ACROSPIRE -> 0.0005;
            case COLOUR -> 0.01;
            default -> 0.05;
        };
    }
}
