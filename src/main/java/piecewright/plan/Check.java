package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.Objects;

/**
 * A visit that finds something out before the first act.
 *
 * @param id logical and stable, such as "check.count.lay-out"; never a time
 * @param about the lot or the piece of kit, by its name
 * @param latest no later, or its result would come too late or mean something else
 */
public record Check(String id, CheckKind kind, String about, Instant startsAt, Instant latest, Gain gain) {
    public Check {
        Objects.requireNonNull(id);
        Objects.requireNonNull(kind);
        Objects.requireNonNull(about);
        Objects.requireNonNull(gain);
        if (startsAt.isAfter(latest)) {
            throw new IllegalArgumentException("startsAt must not be after latest: " + startsAt + ", " + latest);
        }
    }

    public Duration work() {
        return Duration.ofMinutes(kind.workMinutes());
    }

    public Instant endsAt() {
        return startsAt.plus(work());
    }

    /**
     * What it buys: standard deviation of the unknown, now and with the result. A share of corns for a count, of the
     * natural logarithm for steep rate and box, K for an oven.
     *
     * @param sampleG grain it takes that is thrown away, g; 0 for none
     */
    public record Gain(double beforeSd, double afterSd, double sampleG) {
        /** What takes no grain. */
        public Gain(double beforeSd, double afterSd) {
            this(beforeSd, afterSd, 0);
        }

        public Gain {
            if (!(sampleG >= 0)) throw new IllegalArgumentException("sampleG must be 0 or more: " + sampleG);
            if (!(afterSd >= 0 && afterSd <= beforeSd)) {
                throw new IllegalArgumentException("need 0 <= afterSd <= beforeSd: " + afterSd + ", " + beforeSd);
            }
        }
    }
}
