package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.process.couch.Ignition;

/**
 * How a hot couch goes on if it is left alone.
 *
 * @param caught when it passes 45 °C; empty when it will not, or did before anybody looked
 * @param peak when it is hottest
 * @param peakC how hot then, mean of the pile, °C
 * @param drops when it is below 45 °C again; empty when it will not be for days
 */
public record CouchForecast(Optional<Band> caught, Band peak, Warmth peakC, Optional<Band> drops) {
    /** Judgement: eight times in ten the time left is this much shorter or longer; synthetic readings. */
    static final double READ_FRACTION = 0.45;
    /** Judgement: even odds before any reading, of malt packed without much wilting, as a share of the time left. */
    private static final double UNREAD_FRACTION = 0.30;
    /** Judgement: the same for wilted malt. */
    private static final double UNREAD_WILTED_FRACTION = 0.50;
    /** Judgement: eight in ten lie in a band 1.9 times as wide as even odds: normal distribution. */
    private static final double EIGHT_IN_TEN_RATIO = 1.9;
    /** Judgement: malt packed drier than this counts as wilted, wet basis. */
    private static final double WILTED_FRACTION = 0.33;
    /** Judgement: eight peaks in ten lie within this of the forecast, K; the check on its own heat is narrow. */
    private static final double PEAK_K = 1.0;
    /** Judgement: no couch catches after so much cooling down; below it a peak is only where it stalls, °C. */
    private static final double STALLED_C = 40;

    public CouchForecast {
        Objects.requireNonNull(caught);
        Objects.requireNonNull(peak);
        Objects.requireNonNull(peakC);
        Objects.requireNonNull(drops);
    }

    /** A moment with the earliest and latest of eight in ten. */
    public record Band(Instant early, Instant middle, Instant late) {}

    /** A temperature likewise, °C. */
    public record Warmth(double lowC, double middleC, double highC) {}

    /** One state of the pile to come, mean °C. */
    public record Point(Instant at, double pileC) {}

    /** Whether it will never get hot by itself. */
    public boolean stalls() {
        return peakC.middleC() < STALLED_C;
    }

    /**
     * Reads it off a course.
     *
     * @param points from now on, in time order, at least one
     * @param doubtFraction eight in ten, as a share of the time left
     */
    static CouchForecast of(List<Point> points, double doubtFraction) {
        Instant now = points.get(0).at();
        int hottest = 0;
        for (int i = 1; i < points.size(); i++) {
            if (points.get(i).pileC() > points.get(hottest).pileC()) hottest = i;
        }
        double peakC = points.get(hottest).pileC();
        Optional<Band> caught = crossing(points.subList(0, hottest + 1)).map(at -> band(now, at, doubtFraction));
        Optional<Band> drops = crossing(points.subList(hottest, points.size())).map(at -> band(now, at, doubtFraction));
        return new CouchForecast(
                caught,
                band(now, points.get(hottest).at(), doubtFraction),
                new Warmth(peakC - PEAK_K, peakC, peakC + PEAK_K),
                drops);
    }

    /** The share for a couch packed so moist, read since or not. */
    public static double doubtFraction(double packedFraction, int readings) {
        if (readings > 0) return READ_FRACTION;
        return Math.min(
                0.9,
                EIGHT_IN_TEN_RATIO * (packedFraction < WILTED_FRACTION ? UNREAD_WILTED_FRACTION : UNREAD_FRACTION));
    }

    private static Optional<Instant> crossing(List<Point> points) {
        for (int i = 1; i < points.size(); i++) {
            double before = points.get(i - 1).pileC() - Ignition.CAUGHT_C;
            double after = points.get(i).pileC() - Ignition.CAUGHT_C;
            if (before == 0 || before > 0 == after > 0) continue;
            Duration step =
                    Duration.between(points.get(i - 1).at(), points.get(i).at());
            long seconds = Math.round(step.toSeconds() * before / (before - after));
            return Optional.of(points.get(i - 1).at().plusSeconds(seconds));
        }
        return Optional.empty();
    }

    private static Band band(Instant now, Instant at, double doubtFraction) {
        double left = Duration.between(now, at).toSeconds();
        return new Band(
                now.plusSeconds(Math.round(left * (1 - doubtFraction))),
                at,
                now.plusSeconds(Math.round(left * (1 + doubtFraction))));
    }
}
