package piecewright.journal;

import java.time.Instant;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing written down about a piece.
 *
 * @param number 1, 2, …: the name by which people and corrections speak of it
 * @param at when it happened or was found
 * @param writtenAt when it was written down
 * @param actId the act of the plan it belongs to, such as "steep-1.drain"
 */
public record Entry(int number, Instant at, Instant writtenAt, Optional<String> actId, Report report) {
    public Entry {
        if (number < 1) throw new IllegalArgumentException("number must be 1 or more: " + number);
        Objects.requireNonNull(at);
        Objects.requireNonNull(writtenAt);
        Objects.requireNonNull(actId);
        Objects.requireNonNull(report);
        if (report instanceof Report.Corrected corrected && corrected.entry() >= number) {
            throw new IllegalArgumentException("a correction must name an earlier entry: " + corrected.entry());
        }
    }
}
