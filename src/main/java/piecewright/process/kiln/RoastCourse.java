package piecewright.process.kiln;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import piecewright.process.PieceState;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/**
 * A whole roast on trays: the style's oven temperatures one after the other, each for its planned minutes. The oven is
 * taken as hot at once (it is heated before the malt goes in); the malt follows with its lag.
 */
public final class RoastCourse {
    /** Source: definition, 60 min to the hour. */
    private static final double MINUTE_HOURS = 1.0 / 60;

    private final KilnParameters parameters;
    private final RoastSchedule schedule;
    private final double lagHours;
    private final double substrateRatio;

    /**
     * @param lagHours thermal lag of the layer, hours, more than 0
     * @param substrateRatio S before any couch, more than 0
     */
    public RoastCourse(KilnParameters parameters, RoastSchedule schedule, double lagHours, double substrateRatio) {
        this.parameters = Objects.requireNonNull(parameters);
        this.schedule = Objects.requireNonNull(schedule);
        this.lagHours = lagHours;
        this.substrateRatio = substrateRatio;
    }

    /** The roast of a style by its own or another schedule, its malt spread as that asks. */
    public static RoastCourse of(KilnParameters parameters, MaltStyle style, RoastSchedule schedule) {
        double lagHours = style.oven().stew().isPresent()
                ? parameters.roast().stickyLagHours(schedule.depthCm())
                : parameters.roast().dryLagHours(schedule.depthCm());
        return new RoastCourse(
                parameters, schedule, lagHours, style.kiln().colourBase().substrateRatio());
    }

    /** Thermal lag of the layer, hours. */
    public double lagHours() {
        return lagHours;
    }

    /** The malt as it comes out of the oven after the planned minutes of every step. */
    public PieceState roasted(PieceState malt) {
        return afterLast(beforeLast(malt), schedule.last().plannedMinutes());
    }

    /** The malt after every step but the last, whose minutes are free. */
    public PieceState beforeLast(PieceState malt) {
        PieceState now = malt;
        for (HeatStep step : schedule.steps().subList(0, schedule.steps().size() - 1)) {
            now = roast(step).run(now, 0, step.plannedMinutes() * MINUTE_HOURS);
        }
        return now;
    }

    /** The malt that was heated up to the last step, after so many minutes of that. */
    public PieceState afterLast(PieceState heated, double lastMinutes) {
        return roast(schedule.last()).run(heated, 0, lastMinutes * MINUTE_HOURS);
    }

    /** The malt at every full minute from going in until some minutes after the planned end; the first as it goes in. */
    public List<PieceState> byMinute(PieceState malt, int longerMinutes) {
        List<PieceState> course = new ArrayList<>();
        course.add(malt);
        PieceState now = malt;
        int steps = schedule.steps().size();
        for (int number = 1; number <= steps; number++) {
            HeatStep step = schedule.steps().get(number - 1);
            int minutes = step.plannedMinutes() + (number == steps ? longerMinutes : 0);
            TrayRoast roast = roast(step);
            for (int i = 0; i < minutes; i++) {
                now = roast.step(now, 0, MINUTE_HOURS);
                course.add(now);
            }
        }
        return course;
    }

    private TrayRoast roast(HeatStep step) {
        return new TrayRoast(parameters, step.ovenC(), lagHours, substrateRatio);
    }
}
