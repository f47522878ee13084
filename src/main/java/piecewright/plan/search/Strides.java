package piecewright.plan.search;

/**
 * Something that changes with time, walked forward in even strides and read anywhere in between, linear. Scratch space of
 * the search, mutable, used by one thread.
 */
final class Strides {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    static final double USUAL_HOURS = 0.5;

    private final Step step;
    private final double strideHours;
    private final double startMinutes;
    private final double[] before;
    private final double[] now;
    private double nowMinutes;
    private double readMinutes;
    private double strideRatio;

    /** What a stride changes. */
    interface Step {
        /** One stride on, its middle so many hours after the origin. */
        void on(double[] values, double middleHours);
    }

    /**
     * @param strideHours how long a stride is, above 0
     * @param startMinutes minutes since the origin
     * @param values what is walked, as it is then
     */
    Strides(Step step, double strideHours, double startMinutes, double... values) {
        this.step = step;
        this.strideHours = strideHours;
        this.startMinutes = startMinutes;
        this.nowMinutes = startMinutes;
        this.readMinutes = startMinutes;
        this.before = values.clone();
        this.now = values.clone();
    }

    /** Walks on to a minute, no earlier than the one before. */
    void to(double untilMinutes) {
        while (nowMinutes < untilMinutes) {
            System.arraycopy(now, 0, before, 0, now.length);
            step.on(now, nowMinutes / 60 + strideHours / 2);
            nowMinutes += 60 * strideHours;
        }
        readMinutes = untilMinutes;
        strideRatio = 1 - (nowMinutes - untilMinutes) / (60 * strideHours);
    }

    /** The value of that place at the minute walked to. */
    double value(int place) {
        return before[place] + strideRatio * (now[place] - before[place]);
    }

    /** Hours walked. */
    double hours() {
        return (readMinutes - startMinutes) / 60;
    }

    /** Hours of a usual stride that a rising figure spends above a limit. */
    static double hoursAbove(double limit, double from, double until) {
        if (from >= limit) return USUAL_HOURS;
        return until <= limit ? 0 : USUAL_HOURS * (until - limit) / (until - from);
    }
}
