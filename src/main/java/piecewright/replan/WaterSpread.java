package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.belief.Belief;
import piecewright.belief.ForecastNoise;
import piecewright.belief.ReadingNoise;
import piecewright.belief.Trait;
import piecewright.learn.Taught;
import piecewright.plan.Begun;
import piecewright.plan.Continuation;
import piecewright.plan.PlanRequest;
import piecewright.plan.Reading;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Read;
import piecewright.plan.Timetable.Visit;
import piecewright.process.GrainMass;

/**
 * How far the moisture that a scale would tell now may lie from the one that is held: what is believed of lot and kit
 * carried through the batch along each axis of its covariance, the last reading's own error, what the equations miss
 * since then, and the error of reading once more.
 */
final class WaterSpread {
    /** What moves the water of a piece. */
    private static final Set<Trait> MOVING = EnumSet.of(
            Trait.STEEP_RATE,
            Trait.SATURATION,
            Trait.BURST,
            Trait.GROWTH_RATE,
            Trait.RESPIRATION,
            Trait.KERNEL_RATE,
            Trait.FLOOR_DRYING,
            Trait.AIR_FLOW);

    private final Continuation continuation;
    private final PlanRequest request;
    private final Begun asked;
    private final List<Visit> visits;

    /** A piece of which these acts were done; the last of its readings asks how it stands. */
    WaterSpread(Continuation continuation, PlanRequest request, Begun asked, List<Visit> visits) {
        this.continuation = continuation;
        this.request = request;
        this.asked = asked;
        this.visits = List.copyOf(visits);
    }

    /** Standard deviation of the moisture, share of wet weight. */
    double sdFraction(Course course, Optional<Read> told) {
        GrainMass now = last(course).held().mass();
        double held = fraction(course);
        double variance = 0;
        Belief moving = request.belief().only(unknown -> MOVING.contains(unknown.trait()));
        for (Belief other : moving.deviations()) {
            variance += squareOff(Taught.wish(request, other), asked, held);
        }
        if (told.isPresent()) variance += squareOff(request, misread(told.get()), held);
        variance += Math.pow(ReadingNoise.sdFraction(request.house().kit().scale(), now), 2);
        return Math.sqrt(variance + missed(told));
    }

    private double squareOff(PlanRequest other, Begun begun, double held) {
        return continuation
                .course(other, begun, visits)
                .map(course -> Math.pow(fraction(course) - held, 2))
                .orElse(0.0);
    }

    /** What is held had the last reading erred by its standard error. */
    private Begun misread(Read told) {
        GrainMass mass = told.held().mass();
        Reading was = told.reading();
        double sd = was.moistureFraction().isPresent()
                ? ReadingNoise.SAMPLE_FRACTION
                : Math.hypot(
                        ReadingNoise.sdFraction(request.house().kit().scale(), mass),
                        ReadingNoise.dryMatterSdFraction(request.lot(), mass));
        double dry = 1 - mass.moisture().wetBasisFraction();
        Reading other = was.moistureFraction().isPresent()
                ? was.withMoistureFraction(Math.max(0, was.moistureFraction().getAsDouble() - sd))
                : was.withNetKg(mass.totalKg() * (1 + sd / dry));
        List<Reading> readings = new ArrayList<>(asked.found().readings());
        readings.set(readings.lastIndexOf(was), other);
        return asked.withFound(asked.found().withReadings(readings));
    }

    /** Variance of what the equations miss since water was last told. */
    private double missed(Optional<Read> told) {
        Instant since =
                told.map(read -> read.reading().at()).orElse(visits.get(0).at());
        double variance = 0;
        ForecastNoise noise = ForecastNoise.LYING;
        for (int i = 0; i < visits.size(); i++) {
            noise = switch (visits.get(i).kind()) {
                case SOAK -> ForecastNoise.WETTING;
                case LOAD, RAISE, CURE -> ForecastNoise.DRYING;
                case STIR -> noise;
                default -> ForecastNoise.LYING;
            };
            Instant from =
                    visits.get(i).at().isBefore(since) ? since : visits.get(i).at();
            Instant until = i + 1 < visits.size() ? visits.get(i + 1).at() : asked.now();
            if (until.isAfter(from)) {
                variance += noise.variance(Duration.between(from, until).toMinutes() / 60.0);
            }
        }
        return variance;
    }

    private static double fraction(Course course) {
        return last(course).held().mass().moisture().wetBasisFraction();
    }

    private static Read last(Course course) {
        return course.reads().get(course.reads().size() - 1);
    }
}
