package piecewright.plan;

import java.util.Objects;

/**
 * How long one search may go on, and who waits for it. Counted in ways looked at, never by a clock, so that a wish is
 * answered the same on every machine.
 *
 * @param mostWays ways on looked at in one search, then it gives up; 1 or more
 * @param belowMinutes only plans that cost less are of use, cost-minutes; infinite for any
 */
public record Pace(Watch watch, int mostWays, double belowMinutes) {
    /** Judgement: measured; of a thousand searches that find a plan one looks at more than 600 000, the rare hard one at two million. */
    private static final int USUAL_WAYS = 2_400_000;
    /** Judgement: a change that helps is found soon or is no advice; a dozen of them are tried in a second of CPU. */
    private static final int HURRIED_WAYS = 120_000;

    /** Judgement: measured; of a hundred searches that find a plan one looks at more. */
    private static final int AFTER_NOTHING_WAYS = 350_000;

    public Pace {
        Objects.requireNonNull(watch);
        if (mostWays < 1) throw new IllegalArgumentException("mostWays must be 1 or more: " + mostWays);
    }

    public Pace(Watch watch, int mostWays) {
        this(watch, mostWays, Double.POSITIVE_INFINITY);
    }

    public static Pace usual() {
        return new Pace(Watch.none(), USUAL_WAYS);
    }

    /** No end but its own. For small problems. */
    public static Pace endless() {
        return new Pace(Watch.none(), Integer.MAX_VALUE);
    }

    /** The same, watched by one more. */
    Pace watchedBy(Watch another) {
        return new Pace(watch.and(another), mostWays, belowMinutes);
    }

    Pace hurried() {
        return new Pace(watch, Math.min(mostWays, HURRIED_WAYS), belowMinutes);
    }

    /** The same after a search that found nothing: what another kit makes possible is found soon. */
    Pace afterNothing() {
        return new Pace(watch, Math.min(mostWays, AFTER_NOTHING_WAYS), belowMinutes);
    }

    /** Whether what stands in the way is not worth finding out. */
    boolean isHurried() {
        return mostWays <= HURRIED_WAYS;
    }

    /** The same, so many times shorter. */
    Pace shortened(int times) {
        return new Pace(watch, Math.max(1, mostWays / times), belowMinutes);
    }
}
