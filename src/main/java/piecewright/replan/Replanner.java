package piecewright.replan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import piecewright.history.Account;
import piecewright.journal.Report.Tare;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Begun;
import piecewright.plan.Continuation;
import piecewright.plan.Finding;
import piecewright.plan.Obstacle;
import piecewright.plan.Plan;
import piecewright.plan.PlanResult;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.remedy.Change;
import piecewright.remedy.Remedies;
import piecewright.remedy.Remedy;
import piecewright.replan.Move.Because;
import piecewright.replan.Move.Places;
import piecewright.replan.ReplanResult.NotPossible;
import piecewright.replan.ReplanResult.Replanned;

/**
 * Plans the rest of a piece anew. Pure: the same batch, journal and instant give the same plan. What happened is
 * history; acts to come stay where they stand unless that harms more than moving them.
 */
public final class Replanner {
    private final Continuation continuation;
    private final Position position;

    public Replanner(Continuation continuation) {
        this.continuation = continuation;
        this.position = new Position(continuation);
    }

    /**
     * @param vessels vessels whose weight is remembered
     * @param now no act before this
     */
    public ReplanResult replan(Batch batch, List<Tare> vessels, Instant now) {
        Optional<Where> where = position.of(batch, vessels, now);
        Account account = where.map(Where::account).orElseGet(() -> batch.account(vessels, now));
        if (now.isAfter(account.followedUntil()) && !account.visits().isEmpty()) {
            Instant last = batch.planned().get(batch.planned().size() - 1).at();
            return new NotPossible(List.of(new Obstacle.LongAfterPlan(last)), List.of(), account, List.of());
        }
        Begun begun = Position.begun(batch, account, now);
        Continuation.Rest rest = continuation.rest(batch.request(), begun);
        PlanResult result = rest.result();
        if (result instanceof PlanResult.NotPossible not) {
            List<Rescue> rescues = where.map(stands -> RescueRules.of(batch, stands, begun.toCome()))
                    .orElse(List.of());
            return new NotPossible(not.obstacles(), remedies(batch, begun, not.obstacles()), account, rescues);
        }
        Plan plan = ((PlanResult.Planned) result).plan();
        List<Visit> visits = Timetable.of(plan).visits();
        List<Visit> toCome = visits.subList(account.visits().size(), visits.size());
        List<Rescue> rescues =
                where.map(stands -> RescueRules.of(batch, stands, toCome)).orElse(List.of());
        List<Move> moves = moves(begun, toCome, because(batch, begun, account));
        Map<String, Places> elsewhere = elsewhere(begun, plan, account.visits().size());
        return new Replanned(
                plan, placed(moves, elsewhere, toCome), amends(batch, begun, rest.lost()), account, rescues);
    }

    private ReplanResult.Amends amends(Batch batch, Begun begun, List<Finding> lost) {
        List<Remedy> remedies =
                lost.isEmpty() ? List.of() : remedies(batch, begun, continuation.why(batch.request(), begun));
        return new ReplanResult.Amends(lost, remedies);
    }

    /** What would help; once the grain is wet only hours, nights, the day it is wanted and its rest can still change. */
    private List<Remedy> remedies(Batch batch, Begun begun, List<Obstacle> obstacles) {
        return new Remedies(changed -> continuation.kept(changed, begun))
                .against(batch.request(), obstacles).stream()
                        .filter(remedy -> begun.visits().isEmpty() || stillPossible(remedy.change()))
                        .toList();
    }

    private static boolean stillPossible(Change change) {
        return change instanceof Change.LongerHours
                || change instanceof Change.NightActs
                || change instanceof Change.LaterDay
                || change instanceof Change.ShorterRest;
    }

    /** Of each kind of act the first to come that is done at another place, or with other kit, than was planned. */
    private static Map<String, Places> elsewhere(Begun begun, Plan plan, int done) {
        Map<String, Places> elsewhere = new LinkedHashMap<>();
        Set<ActKind> seen = EnumSet.noneOf(ActKind.class);
        for (Act act : plan.acts().subList(done, plan.acts().size())) {
            if (!UnderWay.bounds(act.kind()) || !seen.add(act.kind())) continue;
            Optional<String> before = Optional.ofNullable(begun.places().get(act.kind()));
            Optional<String> after = act.setting().place();
            if (before.isEmpty() || after.isEmpty() || before.equals(after)) continue;
            elsewhere.put(act.id(), new Places(before.get(), after.get()));
        }
        return elsewhere;
    }

    /** The moves with those that change their place, in time order. */
    private static List<Move> placed(List<Move> inTime, Map<String, Places> elsewhere, List<Visit> toCome) {
        List<Move> moves = new ArrayList<>(inTime);
        for (Visit visit : toCome) {
            Places places = elsewhere.get(visit.id());
            if (places == null) continue;
            Optional<Instant> at = Optional.of(visit.at());
            moves.add(new Move(visit.id(), at, at, Optional.of(places), new Because.NoRoom(places.from())));
        }
        moves.sort(Comparator.comparing(move -> move.to().or(move::from).orElseThrow()));
        return moves;
    }

    private static List<Move> moves(Begun begun, List<Visit> toCome, Because because) {
        Map<String, Instant> before = new LinkedHashMap<>();
        for (Visit visit : begun.toCome()) before.put(visit.id(), visit.at());
        Map<String, Instant> after = new HashMap<>();
        for (Visit visit : toCome) after.put(visit.id(), visit.at());
        List<Move> moves = new ArrayList<>();
        before.forEach((id, at) -> {
            Optional<Instant> to = Optional.ofNullable(after.get(id));
            boolean stays = to.isPresent() && to.get().equals(at);
            Because own = silent(begun, at) ? new Because.NotRecorded(id) : because;
            if (!stays) moves.add(new Move(id, Optional.of(at), to, Optional.empty(), own));
        });
        for (Visit visit : toCome) {
            if (!before.containsKey(visit.id())) {
                moves.add(new Move(visit.id(), Optional.empty(), Optional.of(visit.at()), Optional.empty(), because));
            }
        }
        return moves;
    }

    /** Whether an act's time passed since anything was last done. */
    private static boolean silent(Begun begun, Instant at) {
        List<Visit> visits = begun.visits();
        Instant last =
                visits.isEmpty() ? Instant.MIN : visits.get(visits.size() - 1).at();
        return at.isBefore(begun.now()) && at.isAfter(last);
    }

    /** What departs most from the plan. */
    private Because because(Batch batch, Begun begun, Account account) {
        Optional<Visit> overdue = begun.toCome().stream()
                .filter(visit -> silent(begun, visit.at()))
                .findFirst();
        Departures departures = new Departures(batch, account);
        continuation
                .course(batch.request(), begun, account.visits().isEmpty() ? begun.toCome() : account.visits())
                .ifPresent(departures::readings);
        double lateHours = overdue.map(
                        visit -> Duration.between(visit.at(), begun.now()).toMinutes() / 60.0)
                .orElse(0.0);
        Optional<Integer> entry = departures.largestOver(lateHours);
        if (entry.isPresent()) return new Because.Entered(entry.get());
        return overdue.<Because>map(visit -> new Because.NotRecorded(visit.id()))
                .orElseGet(Because.Better::new);
    }
}
