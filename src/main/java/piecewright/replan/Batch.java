package piecewright.replan;

import java.util.List;
import java.util.Objects;
import piecewright.journal.Journal;
import piecewright.plan.PlanRequest;
import piecewright.plan.SetupMaker;
import piecewright.plan.Timetable.Visit;
import piecewright.quantity.Moisture;

/**
 * A batch with its plan so far and its journal.
 *
 * @param grainKg grain as bought that the plan steeps, floaters included, kg
 * @param planned when all acts stand in the plan so far, those done included, in time order
 * @param known the last journal entry that plan took into account; 0 for none
 */
public record Batch(PlanRequest request, double grainKg, List<Visit> planned, int known, Journal journal) {
    public Batch {
        Objects.requireNonNull(request);
        Objects.requireNonNull(journal);
        planned = List.copyOf(planned);
        if (!(grainKg > 0)) throw new IllegalArgumentException("grainKg must be above 0: " + grainKg);
        if (planned.isEmpty()) throw new IllegalArgumentException("planned must not be empty");
    }

    public Batch withRequest(PlanRequest changed) {
        return new Batch(changed, grainKg, planned, known, journal);
    }

    public Batch withJournal(Journal changed) {
        return new Batch(request, grainKg, planned, known, changed);
    }

    /** Dry matter steeped, kg: the grain less its floaters and its water. */
    double dryKg() {
        double floaters = request.lot().size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION);
        Moisture moisture = request.lot().moisture().moisture();
        return grainKg * (1 - floaters) * (1 - moisture.wetBasisFraction());
    }
}
