package piecewright.plan;

/**
 * What it costs when something lasts shorter or longer than it should, in cost-minutes: nothing from early to latest,
 * linear to soft, quadratic to hard, impossible beyond; shorter than early costs linearly down to the shortest, and
 * shorter than that is impossible. Where latest and soft coincide the cost starts from nothing there. All in hours,
 * rising.
 */
public record Slip(double shortestHours, double earlyHours, double latestHours, double softHours, double hardHours) {
    /** Judgement: at the soft limit a slip weighs as much as half an hour of work. */
    public static final double AT_SOFT_MINUTES = 30;
    /** Judgement: at the hard limit a slip weighs as much as four hours of work. */
    public static final double AT_HARD_MINUTES = 240;

    public Slip {
        if (!(shortestHours <= earlyHours
                && earlyHours <= latestHours
                && latestHours <= softHours
                && softHours <= hardHours)) {
            throw new IllegalArgumentException("need shortest <= early <= latest <= soft <= hard: " + shortestHours
                    + ", " + earlyHours + ", " + latestHours + ", " + softHours + ", " + hardHours);
        }
    }

    /** Cost in cost-minutes of lasting so long, 0 or more; infinite when impossible. */
    public double costMinutes(double hours) {
        if (hours < shortestHours || hours > hardHours) return Double.POSITIVE_INFINITY;
        if (hours < earlyHours) return AT_SOFT_MINUTES * (earlyHours - hours) / (earlyHours - shortestHours);
        if (hours <= latestHours) return 0;
        if (hours <= softHours) return AT_SOFT_MINUTES * (hours - latestHours) / (softHours - latestHours);
        double beyond = (hours - softHours) / (hardHours - softHours);
        double atSoft = latestHours < softHours ? AT_SOFT_MINUTES : 0;
        return atSoft + (AT_HARD_MINUTES - atSoft) * beyond * beyond;
    }
}
