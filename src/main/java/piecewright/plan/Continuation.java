package piecewright.plan;

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
    /** Judgement: so many acts may be past their hard limits at once; more is no plan any more. */
    private static final int MOST_OVERDUE = 8;

    private final SetupMaker setups;

    public Continuation(ModelParameters parameters) {
        this.setups = new SetupMaker(parameters);
    }

    /** The piece on its kit, or why it has none. */
    record Bench(PlanRequest request, Span span, Setup setup, double rawC) {
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

    /** The plan these acts make, whether or not it keeps the rules; empty when no kit holds it. */
    public Optional<Plan> told(PlanRequest request, Begun begun, List<Visit> visits) {
        return bench(request, begun, new ArrayList<>())
                .map(bench -> written(
                        request,
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
     * The plan of the whole piece: acts done where they were, the rest from now on. Acts stay where they stand unless
     * moving them saves more than it disturbs; an act past its hard limit comes at the first moment somebody can. The
     * plan's cost is that of the acts to come.
     */
    public PlanResult continued(PlanRequest request, Begun begun) {
        List<Obstacle> obstacles = new ArrayList<>();
        Optional<Bench> bench = bench(request, begun, obstacles);
        if (bench.isEmpty()) return notPossible(request, begun, obstacles);
        Begun going = begun;
        for (int overdue = 0; overdue <= MOST_OVERDUE; overdue++) {
            Bench lenient = lenient(bench.get(), going);
            Searching searching = searching(lenient, going);
            Optional<Draft> draft = draft(lenient, going, searching);
            if (draft.isPresent()) return new PlanResult.Planned(written(request, lenient, begun, draft.get()));
            List<Obstacle> why = searching.refusal();
            if (obstacles.isEmpty()) obstacles.addAll(why);
            boolean hopeless = why.stream().anyMatch(one -> one instanceof Obstacle.TooSoon);
            Optional<Visit> forced = hopeless ? Optional.empty() : new Overdue(lenient, going).next();
            if (forced.isEmpty()) break;
            List<Visit> visits = new ArrayList<>(going.visits());
            visits.add(forced.get());
            going = going.withVisits(visits);
        }
        return notPossible(request, begun, obstacles);
    }

    private PlanResult notPossible(PlanRequest request, Begun begun, List<Obstacle> obstacles) {
        boolean alone = !request.besides().isEmpty()
                && continued(request.beside(List.of()), begun) instanceof PlanResult.Planned;
        if (alone) obstacles.add(0, Obstacle.HeldByOthers.of(request.besides()));
        return new PlanResult.NotPossible(obstacles);
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

    private static Bench lenient(Bench bench, Begun going) {
        if (going.visits().isEmpty()) return bench;
        var style = Leniency.of(bench.request().style(), bench.run(going.visits(), going.found()));
        return new Bench(
                bench.request().withStyle(style), bench.span(), bench.setup().withStyle(style), bench.rawC());
    }

    private static Searching searching(Bench bench, Begun going) {
        Optional<UnderWay> underWay = going.visits().isEmpty()
                ? Optional.empty()
                : Optional.of(Footing.of(bench.run(going.visits(), going.found())));
        return searching(bench, new Resumption(underWay, going.toCome(), going.found(), going.now()));
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
        UnderWay nominal = Footing.of(bench.run(planned, Found.nothing()));
        Resumption resumption = new Resumption(
                Optional.of(nominal),
                going.toCome(),
                Found.nothing(),
                nominal.visits().get(planned.size() - 1).at());
        return searching(bench, resumption)
                .unmoved()
                .map(draft -> draft.costMinutes() + Rules.MOVED_ACT_COST_MINUTES)
                .orElse(0.0);
    }

    private static Plan written(PlanRequest request, Bench bench, Begun begun, Draft draft) {
        Plan plan = new PlanWriter(bench.request(), bench.setup()).write(draft.course(), begun.grainKg(), draft.bill());
        Set<String> done = new HashSet<>();
        begun.visits().forEach(visit -> done.add(visit.id()));
        List<Finding> findings = plan.findings().stream()
                .filter(finding -> !(finding instanceof Finding.PastFreeWindow) || !done.contains(finding.about()))
                .toList();
        return Witnesses.shown(request, Optional.of(begun), plan.withFindings(findings));
    }
}
