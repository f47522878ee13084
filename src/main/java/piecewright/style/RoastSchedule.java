package piecewright.style;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * How dry malt is roasted on open trays, one oven temperature after the other; the minutes of the last step are free
 * within its range and make the colour.
 *
 * @param depthCm depth of the layer, cm, more than 0
 * @param steps at least one
 * @param endMoistureFraction moisture that the style may have at most when it comes out, wet basis
 */
public record RoastSchedule(double depthCm, List<HeatStep> steps, double endMoistureFraction) {
    /** Judgement: finer nobody takes malt out of an oven; the hottest roast gains under 2 % of its colour in it. */
    public static final int TIMER_SECONDS = 10;

    public RoastSchedule {
        steps = List.copyOf(steps);
        if (!(depthCm > 0)) throw new IllegalArgumentException("depthCm must be above 0: " + depthCm);
        if (steps.isEmpty()) throw new IllegalArgumentException("steps must not be empty");
    }

    /**
     * One oven temperature.
     *
     * @param ovenC true temperature of the oven, °C
     * @param shortestMinutes at least so long, more than 0
     * @param longestMinutes at most so long
     */
    public record HeatStep(double ovenC, double shortestMinutes, double longestMinutes) {
        public HeatStep {
            if (!(shortestMinutes > 0 && shortestMinutes <= longestMinutes)) {
                throw new IllegalArgumentException(
                        "need 0 < shortestMinutes <= longestMinutes: " + shortestMinutes + ", " + longestMinutes);
            }
        }

        /** What is planned: the middle of the range, in whole tens of seconds. */
        public Duration planned() {
            return timed((shortestMinutes + longestMinutes) / 2);
        }
    }

    /** The step whose minutes make the colour. */
    public HeatStep last() {
        return steps.get(steps.size() - 1);
    }

    /** The hottest step's temperature, °C. */
    public double hottestC() {
        return steps.stream().mapToDouble(HeatStep::ovenC).max().orElseThrow();
    }

    /** The same in an oven that much hotter, K; cooler where negative. */
    public RoastSchedule hotter(double moreK) {
        List<HeatStep> changed = steps.stream()
                .map(step -> new HeatStep(step.ovenC() + moreK, step.shortestMinutes(), step.longestMinutes()))
                .toList();
        return new RoastSchedule(depthCm, changed, endMoistureFraction);
    }

    /** So many minutes as a timer takes them: the nearest whole tens of seconds. */
    public static Duration timed(double minutes) {
        return Duration.ofSeconds(TIMER_SECONDS * Math.round(60 * minutes / TIMER_SECONDS));
    }

    /** The same with the last step planned at exactly that long, whole tens of seconds. */
    public RoastSchedule withLast(Duration last) {
        double minutes = last.toSeconds() / 60.0;
        List<HeatStep> changed = new ArrayList<>(steps.subList(0, steps.size() - 1));
        changed.add(new HeatStep(last().ovenC(), minutes, minutes));
        return new RoastSchedule(depthCm, changed, endMoistureFraction);
    }
}
