package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StatisticalSummary;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;
import piecewright.plan.Blueprint;

class BeliefTest {
    private static final int SIZE = Doubt.values().length;

    /** Two doubts that lean on each other, as after learning. */
    private static Belief leaning() {
        double[] mean = new double[SIZE];
        double[][] covariance = new double[SIZE][SIZE];
        for (int i = 0; i < SIZE; i++) covariance[i][i] = 0.01;
        mean[Doubt.STEEP_RATE.ordinal()] = 0.2;
        covariance[Doubt.STEEP_RATE.ordinal()][Doubt.STEEP_RATE.ordinal()] = 0.09;
        covariance[Doubt.STEEP_RATE.ordinal()][Doubt.SATURATION.ordinal()] = -0.024;
        covariance[Doubt.SATURATION.ordinal()][Doubt.STEEP_RATE.ordinal()] = -0.024;
        return Belief.of(mean, covariance);
    }

    private static double[] logs(List<Member> members, Doubt doubt) {
        return members.stream()
                .mapToDouble(member -> Math.log(member.ratio(doubt)))
                .toArray();
    }

    private static StatisticalSummary summary(double[] logs) {
        StreamingStatistics statistics = new StreamingStatistics();
        for (double log : logs) statistics.addValue(log);
        return statistics;
    }

    /** Against the mean, spread and correlation asked for, by Hipparchus' statistics. */
    @Test
    void membersScatterAsBelieved() {
        List<Member> members = Members.drawn(leaning(), 200);
        double[] rate = logs(members, Doubt.STEEP_RATE);
        double[] saturation = logs(members, Doubt.SATURATION);
        assertEquals(0.2, summary(rate).getMean(), 0.01);
        assertEquals(0.3, summary(rate).getStandardDeviation(), 0.01);
        assertEquals(0.1, summary(saturation).getStandardDeviation(), 0.01);
        assertEquals(-0.8, new PearsonsCorrelation().correlation(rate, saturation), 0.05);
    }

    @Test
    void whatWasMeasuredIsDoubtedLess() {
        Blueprint garage = Followed.demo("cool-garage");
        Belief prior = Belief.prior(garage);
        assertEquals(0.30, prior.sd(Doubt.STEEP_RATE), 1e-12);
        assertTrue(prior.sd(Doubt.GERMINATION) < Doubt.GERMINATION.usualSd());
        Belief known = leaning().known(Doubt.STEEP_RATE, 0.1);
        assertEquals(0.1, known.sd(Doubt.STEEP_RATE), 1e-12);
        assertEquals(0.1, known.sd(Doubt.SATURATION), 1e-12);
        assertEquals(0.2, known.mean(Doubt.STEEP_RATE), 1e-12);
    }

    @Test
    void theSameBeliefGivesTheSameMembers() {
        assertArrayEquals(
                logs(Members.drawn(leaning(), 50), Doubt.COLOUR), logs(Members.drawn(leaning(), 50), Doubt.COLOUR));
    }

    @Test
    void aBeliefOfOtherDoubtsIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Belief.of(new double[2], new double[2][2]));
    }

    /** Worked by hand: ranks 0.1, 0.5 and 0.9 of ten, of nine figures 1 to 9, are 1, 5 and 9. */
    @Test
    void aBandHoldsEightInTen() {
        assertEquals(new Band(1, 5, 9), Band.of(new double[] {9, 1, 8, 2, 7, 3, 6, 4, 5}));
        assertEquals(new Band(3, 3, 3), Band.of(new double[] {3}));
        assertTrue(new Band(1, 5, 9).contains(9) && !new Band(1, 5, 9).contains(9.1));
    }
}
