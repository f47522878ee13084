package piecewright.ensemble;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.util.List;
import java.util.stream.LongStream;
import org.hipparchus.stat.correlation.PearsonsCorrelation;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.junit.jupiter.api.Test;
import piecewright.plan.Blueprint;
import piecewright.process.Surroundings;

/** Against the spread and the correlation asked for, by Hipparchus' statistics over 4000 seeded members. */
class WeatherTest {
    private final Blueprint plan = Followed.demo("cool-garage");
    private final Instant start = plan.plan().startsAt();
    private final double startHours = Math.floor(plan.hours(start) / 24) * 24;
    private final List<Member> members = LongStream.range(0, 4000)
            .mapToObj(seed -> Members.random(Belief.prior(plan), seed))
            .toList();

    private double[] errorsK(Surroundings told, Instant asOf, double afterDays) {
        Weather weather = new Weather(plan, asOf);
        double hours = startHours + 24 * afterDays;
        return members.stream()
                .mapToDouble(member -> weather.of(told, member).airC(hours) - told.airC(hours))
                .toArray();
    }

    private static double sd(double[] figures) {
        StreamingStatistics statistics = new StreamingStatistics();
        for (double figure : figures) statistics.addValue(figure);
        return statistics.getStandardDeviation();
    }

    /** A shed that swings by 8 K. */
    private Surroundings shed() {
        double[] airC = new double[40 * 24 * Surroundings.STEPS_PER_HOUR];
        for (int i = 0; i < airC.length; i++) {
            airC[i] = 12 + 4 * Math.sin(2 * Math.PI * i / (24.0 * Surroundings.STEPS_PER_HOUR));
        }
        return Surroundings.of(plan.origin(), airC, 0.75, java.util.Optional.empty());
    }

    @Test
    void openAirIsRightToAKelvinTodayAndToThreeInAWeek() {
        assertEquals(1, sd(errorsK(shed(), start, 0)), 0.2);
        assertEquals(3, sd(errorsK(shed(), start, 8)), 0.15);
        assertEquals(3, sd(errorsK(shed(), start.minusSeconds(20 * 86_400), 0)), 0.15);
    }

    @Test
    void aFridgeIsRightToAKelvinForEver() {
        Surroundings fridge = Surroundings.constant(plan.origin(), 6, 0.7);
        assertEquals(1, sd(errorsK(fridge, start, 10)), 0.05);
    }

    @Test
    void errorsLastForDays() {
        double[] monday = errorsK(shed(), start, 3);
        assertEquals(
                Math.exp(-1.0 / 3), new PearsonsCorrelation().correlation(monday, errorsK(shed(), start, 4)), 0.03);
        assertEquals(Math.exp(-1), new PearsonsCorrelation().correlation(monday, errorsK(shed(), start, 6)), 0.04);
    }
}
