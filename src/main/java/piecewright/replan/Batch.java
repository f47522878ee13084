package piecewright.replan;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import piecewright.history.Account;
import piecewright.history.EventLog;
import piecewright.history.Followed;
import piecewright.journal.Journal;
import piecewright.journal.Report.Tare;
import piecewright.plan.ActKind;
import piecewright.plan.PlanRequest;
import piecewright.plan.SetupMaker;
import piecewright.plan.Timetable.Visit;
import piecewright.quantity.Moisture;

/**
 * A batch with its plan so far and its journal.
 *
 * @param grainKg grain as bought that the plan steeps, floaters included, kg
 * @param planned when all acts stand in the plan so far, those done included, in time order
 * @param places the place or kit by name that plan has each kind of act at; empty where that is not known
 * @param known the last journal entry that plan took into account; 0 for none
 */
public record Batch(
        PlanRequest request,
        double grainKg,
        List<Visit> planned,
        Map<ActKind, String> places,
        int known,
        Journal journal) {
    public Batch {
        places = Map.copyOf(places);
        Objects.requireNonNull(request);
        Objects.requireNonNull(journal);
        planned = List.copyOf(planned);
        if (!(grainKg > 0)) throw new IllegalArgumentException("grainKg must be above 0: " + grainKg);
        if (planned.isEmpty()) throw new IllegalArgumentException("planned must not be empty");
    }

    /** The same where nothing is known of the places of its plan. */
    public Batch(PlanRequest request, double grainKg, List<Visit> planned, int known, Journal journal) {
        this(request, grainKg, planned, Map.of(), known, journal);
    }

    public Batch withRequest(PlanRequest changed) {
        return new Batch(changed, grainKg, planned, places, known, journal);
    }

    public Batch withJournal(Journal changed) {
        return new Batch(request, grainKg, planned, places, known, changed);
    }

    /** Dry matter steeped, kg: the grain less its floaters and its water. */
    public double dryKg() {
        double floaters = request.lot().size().floatersFraction().orElse(SetupMaker.USUAL_FLOATERS_FRACTION);
        Moisture moisture = request.lot().moisture().moisture();
        return grainKg * (1 - floaters) * (1 - moisture.wetBasisFraction());
    }

    /**
     * What happened to it until an instant.
     *
     * @param vessels vessels whose weight is remembered
     */
    public Account account(List<Tare> vessels, Instant now) {
        return EventLog.account(new Followed(request.style(), dryKg(), planned), journal, vessels, now);
    }
}
