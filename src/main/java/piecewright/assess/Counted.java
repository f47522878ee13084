package piecewright.assess;

import java.util.OptionalInt;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.hipparchus.stat.interval.BinomialProportion;
import org.hipparchus.stat.interval.ConfidenceInterval;

/**
 * Corns that did among corns looked at, and what that says of the lot. All intervals are at 95 %.
 *
 * @param found [0, corns]
 * @param corns 1 or more
 */
public record Counted(int found, int corns) {
    /** Judgement: the usual confidence. */
    private static final double CONFIDENCE_FRACTION = 0.95;

    public Counted {
        if (corns < 1) throw new IllegalArgumentException("corns must be 1 or more: " + corns);
        if (found < 0 || found > corns) throw new IllegalArgumentException("found must be in 0..corns: " + found);
    }

    public double shareFraction() {
        return (double) found / corns;
    }

    /** Wilson's score interval: what to show. */
    public Interval wilson() {
        ConfidenceInterval interval =
                BinomialProportion.getWilsonScoreInterval(corns, shareFraction(), CONFIDENCE_FRACTION);
        return new Interval(Math.max(0, interval.getLowerBound()), Math.min(1, interval.getUpperBound()));
    }

    /** Clopper and Pearson's exact interval: what a refusal leans on. */
    public Interval clopperPearson() {
        double tail = (1 - CONFIDENCE_FRACTION) / 2;
        return new Interval(lowest(tail), highest(tail));
    }

    /** The share that the lot has at least, one-sided, exact. */
    public double surelyAtLeastFraction() {
        return lowest(1 - CONFIDENCE_FRACTION);
    }

    /** Newcombe's interval of this share less another, from Wilson's intervals of both. */
    public Interval less(Counted other) {
        double difference = shareFraction() - other.shareFraction();
        Interval mine = wilson();
        Interval others = other.wilson();
        double down = Math.hypot(shareFraction() - mine.lowFraction(), others.highFraction() - other.shareFraction());
        double up = Math.hypot(mine.highFraction() - shareFraction(), other.shareFraction() - others.lowFraction());
        return new Interval(difference - down, difference + up);
    }

    /** Fewest of so many corns that must do for 95 % surety of a share; empty when even all are too few. */
    public static OptionalInt fewestToBeSure(int corns, double shareFraction) {
        for (int found = 0; found <= corns; found++) {
            if (new Counted(found, corns).surelyAtLeastFraction() >= shareFraction) return OptionalInt.of(found);
        }
        return OptionalInt.empty();
    }

    /**
     * Corns, in hundreds, after which a lot that goes on as it began is surely above or surely below a share; empty when
     * two thousand would not tell.
     */
    public OptionalInt cornsToSettle(double atFraction) {
        for (int more = 200; more <= 2000; more += 100) {
            Interval exact = new Counted((int) Math.round(shareFraction() * more), more).clopperPearson();
            if (exact.lowFraction() >= atFraction || exact.highFraction() < atFraction) return OptionalInt.of(more);
        }
        return OptionalInt.empty();
    }

    private double lowest(double tail) {
        return found == 0 ? 0 : new BetaDistribution(found, corns - found + 1.0).inverseCumulativeProbability(tail);
    }

    private double highest(double tail) {
        return found == corns
                ? 1
                : new BetaDistribution(found + 1.0, corns - found).inverseCumulativeProbability(1 - tail);
    }
}
