package piecewright.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.plan.Planner.Span;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;
import piecewright.process.PieceState;

/** Goes on with a piece whose plan was begun: how it has run so far, and the plan of the rest. Pure. */
public final class Continuation {
    /** Judgement: no piece has more phases before it, heat turned down and up again included. */
    private static final int MOST_PHASES = 24;

    private static final Obstacle NOTHING = new Obstacle.NothingFits("plan", Instant.EPOCH);

    private final SetupMaker setups;

    public Continuation(ModelParameters parameters) {
        this.setups = new SetupMaker(parameters);
    }

    /** The piece on its kit, or why it has none. */
    record Bench(PlanRequest request, Span span, Setup setup, double rawC) {
        /** The same with no day to be ready by. */
        Bench late(Begun begun) {
            return new Bench(request, span.late(begun), setup, rawC);
        }

        Course run(List<Visit> visits, Found found) {
            return new Simulation(setup, span.origin()).run(new Timetable(visits), Searching.raw(setup, rawC), found);
        }
    }

    /** The grain as it goes into the steep; empty when no kit holds it. */
    public Optional<PieceState> raw(PlanRequest request, Begun begun) {
        return bench(request, begun, new ArrayList<>()).map(bench -> Searching.raw(bench.setup(), bench.rawC()));
    }

    /** How the piece runs through these acts, of which those done are as they were; empty when no kit holds it. */
    public Optional<Course> course(PlanRequest request, Begun begun, List<Visit> visits) {
        return bench(request, begun, new ArrayList<>()).map(bench -> bench.run(visits, begun.found()));
    }

    /** The plan these acts make, proposed to nobody and held to no rule; empty when no kit holds it. */
    public Optional<Plan> told(PlanRequest request, Begun begun, List<Visit> visits) {
        return bench(request, begun, new ArrayList<>())
                .map(bench -> plan(
                        bench,
                        begun,
                        new Draft(
                                bench.setup(),
                                new Timetable(visits),
                                bench.run(visits, begun.found()),
                                Bill.empty(),
                                0)));
    }

    /**
     * The plan of the rest and what it gives up.
     *
     * @param lost of what the style and the wish ask; empty when nothing is
     */
    public record Rest(PlanResult result, List<Finding> lost) {
        public Rest {
            lost = List.copyOf(lost);
        }

        static Rest none() {
            return new Rest(new PlanResult.NotPossible(List.of(NOTHING)), List.of());
        }

        boolean planned() {
            return result instanceof PlanResult.Planned;
        }

        boolean whole() {
            return planned() && lost.isEmpty();
        }

        /** This one, or the other where it gives up less. */
        Rest or(Rest other) {
            boolean better = other.planned() && (!planned() || other.lost().size() < lost.size());
            return better ? other : this;
        }
    }

    /**
     * The plan of the whole piece: acts done where they were, the rest from now on. Acts stay where they stand unless
     * moving them saves more than it disturbs. The plan's cost is that of the acts to come.
     */
    public PlanResult continued(PlanRequest request, Begun begun) {
        return rest(request, begun).result();
    }

    /**
     * The same with what it gives up. Where nothing keeps every limit a piece under way still has a next act: first the
     * day it is wanted gives way, then limits of time, then the style's limits of quality. People's hours, heat that
     * must not run alone and the grain's own order never do.
     */
    public Rest rest(PlanRequest request, Begun begun) {
        List<Obstacle> obstacles = new ArrayList<>();
        Optional<Bench> wanted = bench(request, begun, obstacles);
        if (wanted.isEmpty()) return new Rest(notPossible(request, begun, obstacles), List.of());
        Rest kept = kept(wanted.get(), begun);
        if (kept.whole()) return kept;
        if (begun.visits().isEmpty()) {
            return new Rest(
                    notPossible(request, begun, searching(wanted.get(), begun).refusal()), List.of());
        }
        Rest best = kept;
        Bench late = wanted.get().late(begun);
        Pace[] paces = {
            new Pace(late, false, false),
            new Pace(late, false, true),
            new Pace(wanted.get(), true, false),
            new Pace(late, true, false),
            new Pace(late, true, true)
        };
        for (Pace pace : paces) {
            if (best.planned() && timely(best)) break;
            best = best.or(follow(pace, begun));
        }
        if (!best.planned()) best = stepwise(late, begun);
        if (best.planned()) return best;
        Bench bench = lenient(wanted.get(), begun, false);
        return new Rest(notPossible(request, begun, searching(bench, begun).refusal()), List.of());
    }

    /** Whether nothing but the day is given up. */
    private static boolean timely(Rest rest) {
        return rest.lost().stream().allMatch(finding -> finding instanceof Finding.ReadyLate);
    }

    /** The rest with nothing given up that style and wish ask, acts past their limits as soon as they can be. */
    public PlanResult kept(PlanRequest request, Begun begun) {
        List<Obstacle> obstacles = new ArrayList<>();
        Optional<Bench> bench = bench(request, begun, obstacles);
        if (bench.isEmpty()) return new PlanResult.NotPossible(obstacles);
        Rest rest = kept(bench.get(), begun);
        return rest.whole() ? rest.result() : Rest.none().result();
    }

    private Rest kept(Bench bench, Begun begun) {
        Rest asIs = follow(new Pace(bench, false, false), begun);
        return asIs.planned() || begun.visits().isEmpty() ? asIs : follow(new Pace(bench, false, true), begun);
    }

    /** Why nothing keeps all that style and wish ask. */
    public List<Obstacle> why(PlanRequest request, Begun begun) {
        List<Obstacle> obstacles = new ArrayList<>();
        Optional<Bench> bench = bench(request, begun, obstacles);
        return bench.map(one -> searching(lenient(one, begun, false), begun).refusal())
                .orElse(obstacles);
    }

    /**
     * How far a search for the rest may go.
     *
     * @param wide whether limits of quality give way
     * @param onward whether phases may be ended later than their limits let
     */
    private record Pace(Bench bench, boolean wide, boolean onward) {}

    private Rest follow(Pace pace, Begun begun) {
        Begun going = begun;
        int done = begun.visits().size();
        for (int phases = 0; phases <= MOST_PHASES; phases++) {
            Bench bench = lenient(pace.bench(), going, pace.wide());
            boolean tried = pace.onward() && phases == 0;
            if (!tried && searchable(bench, going)) {
                Optional<Draft> draft = draft(bench, going, searching(bench, going, done));
                if (draft.isPresent()) return written(pace.bench(), bench, begun, draft.get());
            }
            boolean must = !searchable(bench, going);
            if (!pace.onward() && !must) break;
            Overdue overdue = new Overdue(bench, going, done);
            List<Visit> next =
                    phases == 0 && !must ? overdue.tended().map(List::of).orElseGet(overdue::next) : overdue.next();
            if (next.isEmpty()) break;
            going = onward(going, next);
        }
        return Rest.none();
    }

    /** Whether a search can take the piece up; not in a stew, nor in a kiln without heat. */
    private static boolean searchable(Bench bench, Begun going) {
        if (going.visits().isEmpty()) return true;
        Visit began = UnderWay.began(going.visits());
        boolean cured = going.visits().stream().anyMatch(visit -> visit.kind() == ActKind.CURE);
        Setup setup = bench.setup();
        boolean cold = began.kind() == ActKind.LOWER
                && HeatLeft.hottestRung(setup, HeatLeft.heater(setup, cured)).isEmpty();
        return began.kind() != ActKind.STEW && !cold;
    }

    private static Begun onward(Begun going, List<Visit> next) {
        List<Visit> visits = new ArrayList<>(going.visits());
        visits.addAll(next);
        return going.withVisits(visits);
    }

    /** Phase by phase as practice goes on, whatever the limits say. */
    private Rest stepwise(Bench late, Begun begun) {
        Begun going = begun;
        int done = begun.visits().size();
        for (int phases = 0; phases <= MOST_PHASES; phases++) {
            Bench bench = lenient(late, going, true);
            List<Visit> next = new Overdue(bench, going, done).next();
            if (next.isEmpty()) break;
            going = onward(going, next);
        }
        boolean off = going.visits().stream().anyMatch(visit -> visit.kind() == ActKind.OFF);
        if (!off) return Rest.none();
        Bench bench = lenient(late, going, true);
        Draft draft = new Draft(
                bench.setup(),
                new Timetable(going.visits()),
                bench.run(going.visits(), going.found()),
                Bill.empty(),
                0);
        return written(late, bench, begun, draft);
    }

    private PlanResult notPossible(PlanRequest request, Begun begun, List<Obstacle> obstacles) {
        List<Obstacle> all = new ArrayList<>(obstacles);
        boolean alone = !request.besides().isEmpty()
                && continued(request.beside(List.of()), begun) instanceof PlanResult.Planned;
        if (alone) all.add(0, Obstacle.HeldByOthers.of(request.besides()));
        return new PlanResult.NotPossible(all);
    }

    private Optional<Bench> bench(PlanRequest request, Begun begun, List<Obstacle> obstacles) {
        Span span = Span.of(request).goingOn(begun, request.house().zone());
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        return setups.of(request, rooms, begun.grainKg(), KitUsed.of(begun), obstacles)
                .map(setup -> new Bench(
                        request,
                        span,
                        setup,
                        rooms.at(setup.outfit().soaking().place()).airC(0)));
    }

    private static Bench lenient(Bench bench, Begun going, boolean wide) {
        if (going.visits().isEmpty()) return bench;
        var happened = Leniency.of(bench.request().style(), bench.run(going.visits(), going.found()));
        var style = wide ? Leniency.widened(happened) : happened;
        return new Bench(
                bench.request().withStyle(style), bench.span(), bench.setup().withStyle(style), bench.rawC());
    }

    private static Searching searching(Bench bench, Begun begun) {
        return searching(bench, begun, begun.visits().size());
    }

    /** @param done so many of its acts are done, those after them certain */
    private static Searching searching(Bench bench, Begun going, int done) {
        Optional<UnderWay> underWay = going.visits().isEmpty()
                ? Optional.empty()
                : Optional.of(Footing.of(bench.setup(), bench.run(going.visits(), going.found())));
        Instant free = Overdue.free(bench, going, done);
        return searching(bench, new Resumption(underWay, going.toCome(), going.found(), going.now(), free));
    }

    private static Searching searching(Bench bench, Resumption resumption) {
        return new Searching(bench.request(), bench.span(), bench.setup(), bench.rawC(), resumption);
    }

    /** The best draft: as things stand where that costs hardly more than was planned, else the cheaper of both. */
    private static Optional<Draft> draft(Bench bench, Begun going, Searching searching) {
        Optional<Draft> unmoved = searching.unmoved();
        if (unmoved.isPresent() && unmoved.get().costMinutes() <= plannedMinutes(bench, going)) return unmoved;
        Optional<Draft> moved = searching.draft();
        boolean stays = unmoved.isPresent()
                && (moved.isEmpty()
                        || unmoved.get().costMinutes() <= moved.get().costMinutes());
        return stays ? unmoved : moved;
    }

    /** What the acts to come would cost if all had gone by plan so far, and the price of moving one act on top. */
    private static double plannedMinutes(Bench bench, Begun going) {
        List<Visit> planned = new ArrayList<>();
        Set<String> done = new HashSet<>();
        going.visits().forEach(visit -> done.add(visit.id()));
        for (Visit visit : going.planned()) if (done.contains(visit.id())) planned.add(visit);
        boolean asPlanned = planned.stream().anyMatch(visit -> UnderWay.bounds(visit.kind()));
        if (!asPlanned || planned.get(0).kind() != ActKind.SOAK) return Rules.MOVED_ACT_COST_MINUTES;
        UnderWay nominal = Footing.of(bench.setup(), bench.run(planned, Found.nothing()));
        Instant last = nominal.visits().get(planned.size() - 1).at();
        Resumption resumption = new Resumption(Optional.of(nominal), going.toCome(), Found.nothing(), last, last);
        return searching(bench, resumption)
                .unmoved()
                .map(draft -> draft.costMinutes() + Rules.MOVED_ACT_COST_MINUTES)
                .orElse(0.0);
    }

    private static Rest written(Bench own, Bench bench, Begun begun, Draft draft) {
        Plan plan = plan(bench, begun, draft);
        Instant wanted = Span.of(own.request()).readyBy();
        List<Finding> lost =
                Losses.of(own.request(), plan, draft.course(), begun.visits().size(), wanted);
        List<Finding> findings = new ArrayList<>(lost);
        plan.findings().stream().filter(finding -> !lost.contains(finding)).forEach(findings::add);
        Plan told = Witnesses.shown(own.request(), Optional.of(begun), plan.withFindings(findings));
        return new Rest(new PlanResult.Planned(told), lost);
    }

    private static Plan plan(Bench bench, Begun begun, Draft draft) {
        Plan plan = new PlanWriter(bench.request(), bench.setup()).write(draft.course(), begun.grainKg(), draft.bill());
        Set<String> done = new HashSet<>();
        begun.visits().forEach(visit -> done.add(visit.id()));
        List<Finding> findings = plan.findings().stream()
                .filter(finding -> !(finding instanceof Finding.PastFreeWindow) || !done.contains(finding.about()))
                .toList();
        return plan.withFindings(findings);
    }
}
