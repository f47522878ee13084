package piecewright.history;

import java.util.List;
import java.util.Objects;
import piecewright.plan.Timetable.Visit;
import piecewright.style.MaltStyle;

/**
 * The plan a batch followed.
 *
 * @param dryKg dry matter steeped, kg, above 0
 * @param planned when its acts stand, those done included, in time order; empty when there is none
 */
public record Followed(MaltStyle style, double dryKg, List<Visit> planned) {
    public Followed {
        Objects.requireNonNull(style);
        planned = List.copyOf(planned);
        if (!(dryKg > 0)) throw new IllegalArgumentException("dryKg must be above 0: " + dryKg);
    }
}
