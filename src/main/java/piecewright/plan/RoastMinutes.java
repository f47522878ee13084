package piecewright.plan;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.process.PieceState;
import piecewright.process.kiln.RoastCourse;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/** Writes down the minutes of one oven load: settings, stirrings, samples, the end and its limit. */
final class RoastMinutes {
    /** Judgement: a layer is stirred at least so often. */
    private static final Duration STIR = Duration.ofMinutes(15);
    /** Judgement: samples are pulled from so many intervals before the planned end. */
    private static final int SAMPLES_BEFORE = 3;

    private final RoastSchedule schedule;
    private final double dialOffsetK;
    private final Duration prepare;
    private final List<Moment> moments = new ArrayList<>();

    /** @param prepare of the block before the malt goes in */
    RoastMinutes(RoastSchedule schedule, double dialOffsetK, Duration prepare) {
        this.schedule = schedule;
        this.dialOffsetK = dialOffsetK;
        this.prepare = prepare;
    }

    /**
     * When things end.
     *
     * @param planned how long the malt is to be in the oven
     * @param longer how much longer it may be
     * @param block when the block is over, since it began
     */
    record Ends(Duration planned, Duration longer, Duration block) {}

    /** Something to do after so long in the oven. */
    private record Moment(Duration inOven, Kind kind, OptionalDouble ovenC) {}

    /** The steps in time order, with what the malt is then; called once. */
    List<InnerStep> steps(RoastCourse course, PieceState malt, Ends ends) {
        Duration every = sampling();
        Duration sampledFrom = ends.planned().minus(every.multipliedBy(SAMPLES_BEFORE));
        settings(sampledFrom);
        Duration lastFrom = ends.planned().minus(schedule.last().planned());
        Duration latest = ends.planned().plus(ends.longer());
        for (Duration at = sampledFrom; at.compareTo(latest) < 0; at = at.plus(every)) {
            boolean before = at.compareTo(ends.planned()) < 0;
            boolean asPlanned = at.equals(ends.planned());
            if (at.compareTo(lastFrom) > 0 && !asPlanned) add(at, before ? Kind.SAMPLE : Kind.SAMPLE_AGAIN);
        }
        add(ends.planned(), Kind.STOP);
        add(latest, Kind.LATEST);
        moments.sort(Comparator.comparing(Moment::inOven));
        List<InnerStep> steps = written(course, malt);
        steps.add(over(steps, malt, ends));
        return steps;
    }

    private void settings(Duration sampledFrom) {
        Duration from = Duration.ZERO;
        for (HeatStep step : schedule.steps()) {
            Kind kind = from.isZero() ? Kind.GOES_IN : Kind.SET;
            moments.add(new Moment(from, kind, OptionalDouble.of(step.ovenC())));
            Duration until = from.plus(step.planned());
            Duration stirred = until.minus(STIR.dividedBy(2));
            if (sampledFrom.compareTo(stirred) < 0) stirred = sampledFrom;
            for (Duration at = from.plus(STIR); at.compareTo(stirred) < 0; at = at.plus(STIR)) add(at, Kind.STIR);
            from = until;
        }
    }

    /** As far apart as the end may slip without anybody tasting it. */
    private Duration sampling() {
        double softMinutes = 60 * Practice.ROAST_END.softHours(schedule.last().ovenC());
        return Duration.ofMinutes(Math.max(1, Math.round(softMinutes)));
    }

    private void add(Duration inOven, Kind kind) {
        moments.add(new Moment(inOven, kind, OptionalDouble.empty()));
    }

    private List<InnerStep> written(RoastCourse course, PieceState malt) {
        List<PieceState> states =
                course.at(malt, moments.stream().map(Moment::inOven).toList());
        List<InnerStep> steps = new ArrayList<>();
        steps.add(step(
                Duration.ZERO,
                Kind.PREPARE,
                OptionalDouble.of(schedule.steps().get(0).ovenC()),
                malt));
        for (int i = 0; i < moments.size(); i++) {
            Moment moment = moments.get(i);
            steps.add(step(prepare.plus(moment.inOven()), moment.kind(), moment.ovenC(), states.get(i)));
        }
        return steps;
    }

    private InnerStep step(Duration at, Kind kind, OptionalDouble ovenC, PieceState state) {
        OptionalDouble dialC = ovenC.isPresent() ? OptionalDouble.of(ovenC.getAsDouble() - dialOffsetK) : ovenC;
        Inside inside = new Inside(
                state.grainC(),
                state.mass().moisture().wetBasisFraction(),
                state.kiln().colourEbc());
        return new InnerStep(at, kind, ovenC, dialC, inside);
    }

    private static InnerStep over(List<InnerStep> steps, PieceState malt, Ends ends) {
        InnerStep stop = steps.stream()
                .filter(step -> step.kind() == Kind.STOP)
                .findFirst()
                .orElseThrow();
        Inside hot = stop.expect();
        Inside cooled = new Inside(malt.grainC(), hot.moistureFraction(), hot.colourEbc());
        return new InnerStep(ends.block(), Kind.OVER, OptionalDouble.empty(), OptionalDouble.empty(), cooled);
    }
}
