package piecewright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.plan.InnerSchedule.Inside;
import piecewright.plan.InnerSchedule.Kind;
import piecewright.process.PieceState;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/** Writes down the minutes of one oven load: settings, stirrings, samples, the end and its limit. */
final class RoastMinutes {
    /** Judgement: a layer is stirred at least so often, minutes. */
    private static final int STIR_MINUTES = 15;
    /** Judgement: samples are pulled from so many intervals before the planned end. */
    private static final int SAMPLES_BEFORE = 3;

    private final RoastSchedule schedule;
    private final double dialOffsetK;
    private final List<PieceState> byMinute;
    private final int prepareMinutes;
    private final List<InnerStep> steps = new ArrayList<>();

    /**
     * @param byMinute the malt at every minute in the oven
     * @param prepareMinutes minutes of the block before it goes in
     */
    RoastMinutes(RoastSchedule schedule, double dialOffsetK, List<PieceState> byMinute, int prepareMinutes) {
        this.schedule = schedule;
        this.dialOffsetK = dialOffsetK;
        this.byMinute = byMinute;
        this.prepareMinutes = prepareMinutes;
    }

    /**
     * The steps in time order; called once.
     *
     * @param endMinute planned end, minutes in the oven
     * @param longer minutes it may run over
     * @param overMinute when the block is over, minutes since it began
     */
    List<InnerStep> steps(int endMinute, int longer, int overMinute) {
        steps.add(set(0, Kind.PREPARE, schedule.steps().get(0), 0));
        int every = sampleMinutes();
        int sampledFrom = endMinute - SAMPLES_BEFORE * every;
        int from = 0;
        for (HeatStep step : schedule.steps()) {
            steps.add(set(prepareMinutes + from, from == 0 ? Kind.GOES_IN : Kind.SET, step, from));
            int until = from + step.plannedMinutes();
            stirs(from, Math.min(until - STIR_MINUTES / 2, sampledFrom));
            from = until;
        }
        int lastFrom = endMinute - schedule.last().plannedMinutes();
        for (int at = sampledFrom; at < endMinute + longer; at += every) {
            if (at > lastFrom && at != endMinute) add(at, at < endMinute ? Kind.SAMPLE : Kind.SAMPLE_AGAIN);
        }
        add(endMinute, Kind.STOP);
        add(endMinute + longer, Kind.LATEST);
        steps.add(plain(overMinute, Kind.OVER, cooled(endMinute)));
        steps.sort(Comparator.comparingInt(InnerStep::minute));
        return steps;
    }

    /** As far apart as the end may slip without anybody tasting it. */
    private int sampleMinutes() {
        double softMinutes = 60 * Practice.ROAST_END.softHours(schedule.last().ovenC());
        return (int) Math.max(1, Math.round(softMinutes));
    }

    private void stirs(int from, int until) {
        for (int at = from + STIR_MINUTES; at < until; at += STIR_MINUTES) add(at, Kind.STIR);
    }

    private InnerStep set(int minute, Kind kind, HeatStep step, int inOven) {
        return new InnerStep(
                minute,
                kind,
                OptionalDouble.of(step.ovenC()),
                OptionalDouble.of(step.ovenC() - dialOffsetK),
                inside(inOven));
    }

    private void add(int inOven, Kind kind) {
        steps.add(plain(prepareMinutes + inOven, kind, inside(inOven)));
    }

    private static InnerStep plain(int minute, Kind kind, Inside inside) {
        return new InnerStep(minute, kind, OptionalDouble.empty(), OptionalDouble.empty(), inside);
    }

    private Inside cooled(int endMinute) {
        Inside hot = inside(endMinute);
        return new Inside(byMinute.get(0).grainC(), hot.moistureFraction(), hot.colourEbc());
    }

    private Inside inside(int inOven) {
        PieceState state = byMinute.get(inOven);
        return new Inside(
                state.grainC(),
                state.mass().moisture().wetBasisFraction(),
                state.kiln().colourEbc());
    }
}
