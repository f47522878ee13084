package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.history.Account;
import piecewright.journal.Report.Tare;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Begun;
import piecewright.plan.Continuation;
import piecewright.plan.Plan;
import piecewright.plan.Reading;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Read;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.process.PieceState;
import piecewright.process.germination.FloorActs;
import piecewright.replan.Where.Help;
import piecewright.replan.Where.Next;
import piecewright.replan.Where.Water;

/** Says where a piece stands. Pure. */
public final class Position {
    /** Judgement: practice, free drying is over and the bed lies loose at about this moisture, wet basis. */
    static final double LOOSE_FRACTION = 0.23;
    /** Judgement: a bed within half a point of what it should keep needs no water. */
    private static final double KEPT_FRACTION = 0.005;

    private final Continuation continuation;
    private final CouchWatch couch;

    public Position(Continuation continuation) {
        this.continuation = continuation;
        this.couch = new CouchWatch(continuation);
    }

    /**
     * Where the piece stands; empty when the house has no kit for it any more.
     *
     * @param vessels vessels whose weight is remembered
     */
    public Optional<Where> of(Batch batch, List<Tare> vessels, Instant now) {
        Account account = batch.account(vessels, now);
        Instant followed = account.followedUntil();
        Begun begun = begun(batch, account, followed);
        List<Visit> rest = begun.toCome();
        List<Visit> all = new ArrayList<>(account.visits());
        rest.forEach(visit -> all.add(
                visit.at().isAfter(followed) ? visit : new Visit(visit.id(), visit.kind(), visit.number(), followed)));
        Optional<Plan> plan = continuation.told(batch.request(), begun, all);
        if (plan.isEmpty()) return Optional.empty();
        Optional<Course> course = account.visits().isEmpty()
                ? Optional.empty()
                : continuation.course(batch.request(), asked(begun, account), account.visits());
        PieceState state = course.map(Position::last)
                .map(Read::held)
                .or(() -> continuation.raw(batch.request(), begun))
                .orElseThrow();
        Water water = water(batch, begun, account, course, state);
        Help help = course.isPresent()
                ? help(batch, account, plan.get(), state, followed)
                        .withCouch(couch.of(batch, begun))
                        .withHotBed(HotBed.of(batch.request().style().growth(), plan.get(), followed))
                        .withWetMalt(WetMalt.of(batch.request().style().kiln(), account, water, now))
                : Help.none();
        return Optional.of(new Where(now, plan.get(), state, water, next(plan.get(), rest, now), help, account));
    }

    static Begun begun(Batch batch, Account account, Instant now) {
        return new Begun(batch.grainKg(), account.visits(), account.found(), batch.planned(), batch.places(), now);
    }

    private static Begun asked(Begun begun, Account account) {
        List<Reading> readings = new ArrayList<>(begun.found().readings());
        readings.add(Reading.nothing(account.followedUntil()));
        return begun.withFound(begun.found().withReadings(readings));
    }

    private static Read last(Course course) {
        return course.reads().get(course.reads().size() - 1);
    }

    private static Next next(Plan plan, List<Visit> rest, Instant now) {
        List<Visit> overdue =
                rest.stream().filter(visit -> !visit.at().isAfter(now)).toList();
        if (rest.isEmpty()) return new Next(Optional.empty(), Duration.ZERO, overdue);
        Optional<Act> act = plan.acts().stream()
                .filter(each -> each.id().equals(rest.get(0).id()))
                .findFirst();
        return new Next(act, Duration.between(now, rest.get(0).at()), overdue);
    }

    private Water water(Batch batch, Begun begun, Account account, Optional<Course> course, PieceState state) {
        double fraction = state.mass().moisture().wetBasisFraction();
        var lot = batch.request().lot().moisture();
        if (course.isEmpty()) return new Water.Known(fraction, lot.sdFraction(), Optional.empty());
        Optional<Read> weighed = course.get().reads().stream()
                .filter(read -> read.reading().weighs())
                .reduce((first, second) -> second);
        boolean sampled = weighed.isPresent()
                && weighed.get().reading().moistureFraction().isPresent();
        if (weighed.isPresent() && !sampled && fraction <= Reading.TELLING_FRACTION + 1e-9) {
            return new Water.AtOrBelow(Reading.TELLING_FRACTION);
        }
        double sd = new WaterSpread(continuation, batch.request(), asked(begun, account), account.visits())
                .sdFraction(course.get(), weighed);
        return new Water.Known(fraction, sd, weighed.map(read -> read.reading().at()));
    }

    private static Help help(Batch batch, Account account, Plan plan, PieceState state, Instant now) {
        Visit began = UnderWay.began(account.visits());
        double fraction = state.mass().moisture().wetBasisFraction();
        if (began.kind() == ActKind.FLOOR) {
            double keep = batch.request().style().growth().keepMoistureFraction();
            boolean dry = fraction < keep - KEPT_FRACTION;
            return dry ? Help.sprinkle(FloorActs.sprinklingKg(state.mass(), keep / (1 - keep))) : Help.none();
        }
        boolean dries = began.kind() == ActKind.LOAD || began.kind() == ActKind.RAISE;
        if (!dries || fraction <= LOOSE_FRACTION) return Help.none();
        Optional<Duration> breaks = plan.course().stream()
                .filter(sample -> sample.at().isAfter(now)
                        && sample.state().mass().moisture().wetBasisFraction() <= LOOSE_FRACTION)
                .findFirst()
                .map(sample -> Duration.between(now, sample.at()));
        return Help.none().withBreaks(breaks);
    }
}
