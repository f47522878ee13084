package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.plan.Plan.Sample;
import piecewright.process.couch.CouchCurve;
import piecewright.process.couch.HotCouch;
import piecewright.style.HotCouchSchedule;

/**
 * How the heap of a couched plan heats if nobody breaks it, from packing to the last hour its style allows.
 *
 * @param origin hour 0 of the curve
 * @param packedAt when the heap is packed; breakAt when the plan breaks it
 * @param packedFraction moisture at packing, wet basis
 * @param curve mean temperature of the heap
 */
public record HeapCurve(
        Instant origin,
        Instant packedAt,
        Instant breakAt,
        double packedFraction,
        HotCouchSchedule schedule,
        CouchCurve curve) {
    /** Air is laid out this long before packing, so that a phase can begin in it. */
    private static final Duration MARGIN = Duration.ofDays(1);

    public HeapCurve {
        Objects.requireNonNull(origin);
        Objects.requireNonNull(schedule);
        Objects.requireNonNull(curve);
        if (!packedAt.isBefore(breakAt)) throw new IllegalArgumentException("packed at or after breaking: " + packedAt);
    }

    /** The heap of a plan for this request; empty for a plan without one, or when no box of the house holds it. */
    public static Optional<HeapCurve> of(ModelParameters parameters, PlanRequest request, Plan plan) {
        Optional<Act> pack = act(plan, ActKind.PACK);
        Optional<Act> broken = act(plan, ActKind.BREAK);
        Optional<HotCouchSchedule> schedule = request.style().couches().hot();
        if (pack.isEmpty() || broken.isEmpty() || schedule.isEmpty()) return Optional.empty();
        Instant packedAt = pack.get().startsAt();
        Optional<Sample> packed = plan.course().stream()
                .filter(sample -> !sample.at().isAfter(packedAt))
                .reduce((first, second) -> second);
        Instant origin = packedAt.minus(MARGIN);
        double untilHours = hours(origin, packedAt) + schedule.get().longestHours();
        Rooms rooms =
                new Rooms(request.house(), origin, instant(origin, untilHours).plus(MARGIN));
        Optional<Couching> couching = new SetupMaker(parameters)
                .of(
                        request.arranged(request.arrangement().asIn(plan.acts())),
                        rooms,
                        plan.outcome().rawGrainKg(),
                        new ArrayList<>())
                .flatMap(Setup::couching);
        if (packed.isEmpty() || couching.isEmpty()) return Optional.empty();
        HotCouch couch = new HotCouch(couching.get().model(), couching.get().air());
        return Optional.of(new HeapCurve(
                origin,
                packedAt,
                broken.get().startsAt(),
                packed.get().state().mass().moisture().wetBasisFraction(),
                schedule.get(),
                CouchCurve.of(couch, packed.get().state(), hours(origin, packedAt), untilHours)));
    }

    private static Optional<Act> act(Plan plan, ActKind kind) {
        return plan.acts().stream().filter(act -> act.kind() == kind).findFirst();
    }

    /** The moment of an hour of the curve. */
    public Instant instant(double atHours) {
        return instant(origin, atHours);
    }

    /** The hour of the curve at a moment. */
    public double hours(Instant at) {
        return hours(origin, at);
    }

    /** When the heap passes a temperature on its way up; empty when it never does. */
    public Optional<Instant> rises(double pileC) {
        return moment(curve.risesToHours(pileC));
    }

    /** When, past its peak, the heap falls through a temperature; empty when it does not before its hours are over. */
    public Optional<Instant> falls(double pileC) {
        return moment(curve.fallsToHours(pileC));
    }

    private Optional<Instant> moment(OptionalDouble atHours) {
        return atHours.isPresent() ? Optional.of(instant(atHours.getAsDouble())) : Optional.empty();
    }

    private static Instant instant(Instant origin, double atHours) {
        return origin.plusSeconds(Math.round(atHours * 60) * 60);
    }

    private static double hours(Instant origin, Instant at) {
        return Duration.between(origin, at).toMillis() / 3_600_000.0;
    }
}
