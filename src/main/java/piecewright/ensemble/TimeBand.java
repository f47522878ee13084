package piecewright.ensemble;

import java.time.Instant;

/** When something happens: before p10 one time in ten, before p50 every other time, before p90 nine times in ten. */
public record TimeBand(Instant p10, Instant p50, Instant p90) {
    static TimeBand of(Instant origin, Band minutes) {
        return new TimeBand(at(origin, minutes.p10()), at(origin, minutes.p50()), at(origin, minutes.p90()));
    }

    private static Instant at(Instant origin, double minute) {
        return origin.plusSeconds(60 * Math.round(minute));
    }
}
