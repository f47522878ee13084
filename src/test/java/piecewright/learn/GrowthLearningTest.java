package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import piecewright.belief.Belief;
import piecewright.belief.Priors;
import piecewright.belief.Trait;
import piecewright.belief.Unknown;

/** What acrospire counts teach, against the worked re-fit of the reference. */
class GrowthLearningTest {
    private static final Unknown RATE = new Unknown(Trait.GROWTH_RATE, "lot");
    private static final Belief PRIOR = Belief.independent(List.of(new Belief.Single(RATE, 1, Priors.GROWTH_RATE_SD)));

    /** The reference counts warmth, 12 K·d to chit and 67 to full growth, and lets the rate scale all of it. */
    private static Prediction counted(double... usualFractions) {
        return Prediction.of(values -> {
            double rate = values.of(Trait.GROWTH_RATE, "lot", 1);
            double[] fractions = new double[usualFractions.length];
            for (int i = 0; i < fractions.length; i++) fractions[i] = (rate * (12 + 67 * usualFractions[i]) - 12) / 67;
            return fractions;
        });
    }

    private static Observation count(double fraction, int corns) {
        return new Observation(
                "c",
                Instant.parse("2031-02-03T08:00:00Z"),
                Figure.ACROSPIRE,
                fraction,
                ReadingErrors.acrospireSd(corns));
    }

    /** Worked: .50 seen where .40 was foretold, 50 corns, cv .2: y = .1593, ln ρ = .1254. */
    @Test
    void theWorkedRefitComesOut() {
        Belief posterior = Estimator.estimate(PRIOR, counted(0.40), List.of(count(0.50, 50)))
                .posterior();
        assertEquals(0.1254, Math.log(posterior.value(RATE)), 0.0005);
        double error = 0.04 / 50 + 0.01;
        assertEquals(Math.sqrt(0.04 * error / (0.04 + error)), posterior.axisSd(RATE), 0.0005);
    }

    /** One count at .4 or more leaves about a tenth, as the reference says. */
    @Test
    void aCountHalvesTheDoubt() {
        Belief posterior = Estimator.estimate(PRIOR, counted(0.45), List.of(count(0.45, 50)))
                .posterior();
        assertEquals(0.10, posterior.axisSd(RATE), 0.015);
    }
}
