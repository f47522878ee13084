package piecewright.sheet;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import piecewright.chart.Followed;

/**
 * What is known beside a plan when its sheet is printed.
 *
 * @param bands weights to be expected, by act id; acts without one show their middle alone
 * @param done ids of acts that are done: they are ticked and not explained again
 * @param followed what was measured so far
 */
public record Known(Map<String, MassBand> bands, Set<String> done, Followed followed) {
    public Known {
        bands = Map.copyOf(bands);
        done = Set.copyOf(done);
        Objects.requireNonNull(followed);
    }

    /** Of a plan that nobody began. */
    public static Known of(Map<String, MassBand> bands) {
        return new Known(bands, Set.of(), Followed.nothing());
    }
}
