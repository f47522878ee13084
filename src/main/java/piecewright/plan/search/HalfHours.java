package piecewright.plan.search;

/**
 * Something that changes with time, walked forward in half hours and read anywhere in between, linear. Scratch space of
 * the search, mutable, used by one thread.
 */
final class HalfHours {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    static final double STEP_HOURS = 0.5;

    private final Step step;
    private final double startMinutes;
    private final double[] before;
    private final double[] now;
    private double nowMinutes;
    private double readMinutes;
    private double stepRatio;

    /** What half an hour changes. */
    interface Step {
        /** One half hour on, its middle so many hours after the origin. */
        void on(double[] values, double middleHours);
    }

    /**
     * @param startMinutes minutes since the origin
     * @param values what is walked, as it is then
     */
    HalfHours(Step step, double startMinutes, double... values) {
        this.step = step;
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
            step.on(now, nowMinutes / 60 + STEP_HOURS / 2);
            nowMinutes += 60 * STEP_HOURS;
        }
        readMinutes = untilMinutes;
        stepRatio = 1 - (nowMinutes - untilMinutes) / (60 * STEP_HOURS);
    }

    /** The value of that place at the minute walked to. */
    double value(int place) {
        return before[place] + stepRatio * (now[place] - before[place]);
    }

    /** Hours walked. */
    double hours() {
        return (readMinutes - startMinutes) / 60;
    }

    /** Hours of a half hour that a rising figure spends above a limit. */
    static double hoursAbove(double limit, double from, double until) {
        if (from >= limit) return STEP_HOURS;
        return until <= limit ? 0 : STEP_HOURS * (until - limit) / (until - from);
    }
}
