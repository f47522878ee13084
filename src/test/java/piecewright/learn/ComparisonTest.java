package piecewright.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;
import piecewright.learn.Comparison.Account;
import piecewright.learn.Comparison.Input;
import piecewright.learn.Comparison.Outcome;

/** Two batches that differ in one thing. */
class ComparisonTest {
    private static final Instant AT = Instant.parse("2031-02-20T08:00:00Z");

    private static Account account(String cureHours, double ebc, double maltKg) {
        return new Account(
                List.of(new Input("style", "pale"), new Input("hours of curing", cureHours)),
                List.of(
                        new Outcome("colour", new Observation("c", AT, Figure.COLOUR, ebc, 0.10)),
                        new Outcome("malt", new Observation("m", AT, Figure.WEIGHT, maltKg, 0.02))));
    }

    /** ln(4.5 / 3) = .405 with an error of .1·√2: 2.87 standard errors, by chance .41 %; by Hipparchus' normal. */
    @Test
    void aDifferenceIsHeldAgainstTheErrorsOfBoth() {
        Comparison comparison = Comparison.of(account("3", 3.0, 4.00), account("5", 4.5, 4.03));
        assertTrue(comparison.differInOneThing());
        assertEquals(
                List.of(new Comparison.InputDifference("hours of curing", Optional.of("3"), Optional.of("5"))),
                comparison.inputs());
        var colour = comparison.outcomes().get(0);
        double deviations = Math.log(1.5) / (0.1 * Math.sqrt(2));
        assertEquals(2 * new NormalDistribution().cumulativeProbability(-deviations), colour.byChanceFraction(), 1e-6);
        assertEquals(1.5, colour.change().middle(), 1e-12);
        assertEquals(
                1.5 * Math.exp(1.28155 * 0.1 * Math.sqrt(2)), colour.change().high(), 1e-4);
        assertTrue(colour.isMoreThanNoise());
        var malt = comparison.outcomes().get(1);
        assertEquals(0.03, malt.change().middle(), 1e-12);
        assertFalse(malt.isMoreThanNoise(), "30 g with errors of 20 g each");
    }

    @Test
    void whatOnlyOneBatchHasIsADifferenceToo() {
        Account plain = new Account(List.of(new Input("style", "pale")), List.of());
        Comparison comparison = Comparison.of(plain, account("3", 3, 4));
        assertEquals(
                List.of(new Comparison.InputDifference("hours of curing", Optional.empty(), Optional.of("3"))),
                comparison.inputs());
        assertEquals(List.of(), comparison.outcomes());
    }

    @Test
    void equalBatchesDifferInNothing() {
        Comparison comparison = Comparison.of(account("3", 3, 4), account("3", 3, 4));
        assertEquals(List.of(), comparison.inputs());
        assertEquals(1, comparison.outcomes().get(0).byChanceFraction(), 1e-6);
    }
}
