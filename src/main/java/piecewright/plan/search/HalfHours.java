package piecewright.plan.search;

/**
 * Something that changes with time, walked forward in half hours and read anywhere in between, linear. Scratch space of
 * the search, mutable, used by one thread.
 */
abstract class HalfHours {
    /** Judgement: half an hour; tests hold the quick forms to the reference stages. */
    static final double STEP_HOURS = 0.5;

    private static final double STEP_MINUTES = 60 * STEP_HOURS;

    private final double startMinute;
    private final double[] before;
    private final double[] now;
    private double nowMinute;
    private double readMinute;
    private double shareOfStep;

    /** @param values what is walked, as it is at that minute */
    HalfHours(double atMinute, double... values) {
        this.startMinute = atMinute;
        this.nowMinute = atMinute;
        this.readMinute = atMinute;
        this.before = values.clone();
        this.now = values.clone();
    }

    /** Walks on to a minute, no earlier than the one before. */
    final void to(double untilMinute) {
        while (nowMinute < untilMinute) {
            System.arraycopy(now, 0, before, 0, now.length);
            step(now, (nowMinute + STEP_MINUTES / 2) / 60);
            nowMinute += STEP_MINUTES;
        }
        readMinute = untilMinute;
        shareOfStep = 1 - (nowMinute - untilMinute) / STEP_MINUTES;
    }

    /** One half hour on, its middle so many hours after the origin. */
    abstract void step(double[] values, double middleHours);

    /** The value of that place at the minute walked to. */
    final double value(int place) {
        return before[place] + shareOfStep * (now[place] - before[place]);
    }

    /** Hours walked. */
    final double hours() {
        return (readMinute - startMinute) / 60;
    }

    /** What is left of a half hour in which a value rises from one figure to another, once it has passed a third; hours. */
    static double hoursAbove(double limit, double from, double until) {
        if (from >= limit) return STEP_HOURS;
        return until <= limit ? 0 : STEP_HOURS * (until - limit) / (until - from);
    }
}
