package piecewright.process.kiln;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import piecewright.process.PieceState;
import piecewright.process.kiln.RoastParameters.Layer;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/**
 * A whole roast on trays: the style's oven temperatures one after the other, each for its planned minutes. The oven is
 * taken as hot at once (it is heated before the malt goes in); the malt follows with its lag.
 */
public final class RoastCourse {
    /** Source: definition, 3600 s to the hour. */
    private static final double SECONDS_PER_HOUR = 3600;

    private final KilnParameters parameters;
    private final RoastSchedule schedule;
    private final Layer layer;
    private final double substrateRatio;

    /**
     * @param substrateRatio S before any couch, more than 0
     */
    public RoastCourse(KilnParameters parameters, RoastSchedule schedule, Layer layer, double substrateRatio) {
        this.parameters = Objects.requireNonNull(parameters);
        this.schedule = Objects.requireNonNull(schedule);
        this.layer = Objects.requireNonNull(layer);
        this.substrateRatio = substrateRatio;
    }

    /** The roast of a style by its own or another schedule, its malt spread as that asks. */
    public static RoastCourse of(KilnParameters parameters, MaltStyle style, RoastSchedule schedule) {
        Layer layer = style.oven().stew().isPresent()
                ? parameters.roast().stickyLayer(schedule.depthCm())
                : parameters.roast().dryLayer(schedule.depthCm());
        return new RoastCourse(
                parameters, schedule, layer, style.kiln().colourBase().substrateRatio());
    }

    /** Thermal lag of the layer, hours. */
    public double lagHours() {
        return layer.lagHours();
    }

    /** The malt as it comes out of the oven after the planned minutes of every step. */
    public PieceState roasted(PieceState malt) {
        return afterLast(beforeLast(malt), schedule.last().planned());
    }

    /** The malt after every step but the last, whose minutes are free. */
    public PieceState beforeLast(PieceState malt) {
        PieceState now = malt;
        for (HeatStep step : schedule.steps().subList(0, schedule.steps().size() - 1)) {
            now = roast(step).run(now, 0, hours(step.planned().toSeconds()));
        }
        return now;
    }

    /** The malt that was heated up to the last step, after so long in that. */
    public PieceState afterLast(PieceState heated, Duration last) {
        return roast(schedule.last()).run(heated, 0, hours(last.toSeconds()));
    }

    /** The malt after so long in the oven, times rising; beyond the planned end the last step goes on. */
    public List<PieceState> at(PieceState malt, List<Duration> inOven) {
        List<PieceState> course = new ArrayList<>();
        PieceState now = malt;
        long reachedSeconds = 0;
        for (Duration time : inOven) {
            now = onward(now, reachedSeconds, time.toSeconds());
            reachedSeconds = time.toSeconds();
            course.add(now);
        }
        return course;
    }

    private PieceState onward(PieceState from, long fromSeconds, long untilSeconds) {
        PieceState now = from;
        long beginsSeconds = 0;
        for (HeatStep step : schedule.steps()) {
            long endsSeconds = step == schedule.last()
                    ? untilSeconds
                    : beginsSeconds + step.planned().toSeconds();
            long enters = Math.max(beginsSeconds, fromSeconds);
            long leaves = Math.min(endsSeconds, untilSeconds);
            if (leaves > enters) now = roast(step).run(now, 0, hours(leaves - enters));
            beginsSeconds = endsSeconds;
        }
        return now;
    }

    private static double hours(long seconds) {
        return seconds / SECONDS_PER_HOUR;
    }

    private TrayRoast roast(HeatStep step) {
        return new TrayRoast(parameters, step.ovenC(), layer, substrateRatio);
    }
}
