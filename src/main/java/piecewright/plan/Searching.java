package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.plan.Planner.Span;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Nearby;
import piecewright.plan.search.QuickForms;
import piecewright.plan.search.Search;
import piecewright.plan.search.Stops;
import piecewright.plan.search.TimeGrid;
import piecewright.process.PieceState;
import piecewright.quantity.Moisture;

/** One search for one piece: the grid, the polish, and again with drier gates where the reference stages object. */
final class Searching {
    /** Judgement: minutes between candidates up to the kiln and at it: wide enough to be quick; the polish finds the minute. */
    private static final int[] WIDE_MINUTES = {120, 30};
    /** Judgement: the same for a piece with a hot couch, whose hours make its colour. */
    private static final int[] COUCHED_MINUTES = {100, 30};
    /** Judgement: the same for a piece that may be heaped to chit: heaps worth their while are narrow. */
    private static final int[] HEAPED_MINUTES = {80, 15};
    /** Judgement: polishing moves acts by so many minutes at most, in such steps: first as far as the grid is wide. */
    private static final int[][] POLISHES_MINUTES = {{120, 30}, {30, 10}, {10, 5}};
    /** Judgement: how much drier gates are asked to be, wet basis, when the reference finds one still shut. */
    private static final double[] GATE_MARGINS_FRACTION = {0, 0.005, 0.015};

    /** Judgement: acts that stand are not moved for what the quick forms may be out at a gate; the reference decides. */
    private static final double UNSURE_GATE_FRACTION = 0.01;

    /** Judgement: to say why there is no plan is worth a sixth of looking for one. */
    private static final int WHY_TIMES = 6;

    private final PlanRequest request;
    private final Span span;
    private final Setup setup;
    private final double rawC;
    private final Resumption resumption;
    private final Availability availability;
    private final Pace pace;

    Searching(PlanRequest request, Span span, Setup setup, double rawC, Pace pace) {
        this(request, span, setup, rawC, Resumption.none(), pace);
    }

    /** Goes on from where a piece stands. */
    Searching(PlanRequest request, Span span, Setup setup, double rawC, Resumption resumption) {
        this(request, span, setup, rawC, resumption, Pace.usual());
    }

    private Searching(PlanRequest request, Span span, Setup setup, double rawC, Resumption resumption, Pace pace) {
        this.pace = pace;
        this.resumption = resumption;
        this.request = request;
        this.span = span;
        this.setup = setup;
        this.rawC = rawC;
        this.availability =
                Availability.of(request.house(), span.origin(), span.until()).beside(request.besides());
    }

    /**
     * The best draft that holds; empty when there is none. What is found for all people is held against what fewer of
     * them would do: more hours mean more rivals, and a search that prunes may lose the better plan among them.
     */
    Optional<Draft> draft() {
        List<Availability> fewer = Stream.iterate(
                        Optional.of(availability),
                        Optional::isPresent,
                        hours -> hours.flatMap(Availability::withoutTheLast))
                .flatMap(Optional::stream)
                .filter(this::findsTheHeatAsSoon)
                .toList();
        Pace each = pace.shortened(fewer.size());
        return fewer.parallelStream()
                .map(hours -> draft(hours, each))
                .flatMap(Optional::stream)
                .reduce((one, other) -> other.costMinutes() < one.costMinutes() ? other : one);
    }

    /**
     * Heat that is on already is looked after by whoever is there first, all people counted: what only comes to it later
     * would leave it alone while somebody could turn it down.
     */
    private boolean findsTheHeatAsSoon(Availability hours) {
        if (resumption.piece().isEmpty()) return true;
        return hours.firstThere(resumption.notBefore()).equals(availability.firstThere(resumption.notBefore()));
    }

    private int[] stepsMinutes() {
        if (setup.couching().isPresent()) return COUCHED_MINUTES;
        boolean heaps =
                setup.heaping().filter(heaping -> heaping.expected().helps()).isPresent();
        return heaps ? HEAPED_MINUTES : WIDE_MINUTES;
    }

    private Optional<Draft> draft(Availability hours, Pace pace) {
        ZoneId zone = request.house().zone();
        TimeGrid grid = resumption.on(
                TimeGrid.of(hours, zone, span.origin(), span.until(), stepsMinutes()[0], stepsMinutes()[1]));
        QuickForms forms = QuickForms.of(setup);
        for (double margin : GATE_MARGINS_FRACTION) {
            List<Search.Found> found = new Search(forms, grid, wish(span, margin), pace).best(1);
            if (found.isEmpty()) return Optional.empty();
            Optional<Draft> rough = simulated(found.get(0));
            if (rough.isPresent())
                return Optional.of(polished(found.get(0), rough.get(), hours, new With(forms, margin)));
        }
        return Optional.empty();
    }

    /** The draft whose acts to come stand where they stand; empty when that cannot be. */
    Optional<Draft> unmoved() {
        ZoneId zone = request.house().zone();
        TimeGrid grid = resumption.on(TimeGrid.near(availability, zone, span.origin(), List.of(), 1, 1));
        return new Search(setup, grid, wish(span, -UNSURE_GATE_FRACTION))
                .exactly(resumption.unmoved())
                .flatMap(this::simulated);
    }

    /** What a search works with: the quick forms, and how much drier gates are asked to be, wet basis. */
    private record With(QuickForms forms, double marginFraction) {}

    /** The same timetable with its acts moved where that costs less; as far as the reference stages let it. */
    private Draft polished(Search.Found rough, Draft draft, Availability hours, With with) {
        Deque<Search.Found> polished = new ArrayDeque<>();
        Search.Found best = rough;
        for (int[] polish : POLISHES_MINUTES) {
            List<Instant> instants =
                    best.timetable().visits().stream().map(Visit::at).toList();
            ZoneId zone = request.house().zone();
            TimeGrid near = resumption.on(TimeGrid.near(hours, zone, span.origin(), instants, polish[0], polish[1]));
            Nearby nearby = Nearby.of(best.timetable(), Duration.ofMinutes(polish[0]), best.costMinutes());
            Optional<Search.Found> found =
                    Search.near(with.forms(), near, wish(span, with.marginFraction()), nearby, pace).best(1).stream()
                            .findFirst();
            found.ifPresent(polished::push);
            best = found.orElse(best);
        }
        return polished.stream()
                .map(this::simulated)
                .flatMap(Optional::stream)
                .findFirst()
                .orElse(draft);
    }

    private Optional<Draft> simulated(Search.Found found) {
        Timetable timetable = resumption.named(found.timetable());
        Course course = new Simulation(setup, span.origin()).run(timetable, raw(setup, rawC), resumption.found());
        return Verification.holds(setup, course, resumption.done())
                ? Optional.of(new Draft(setup, timetable, course, found.bill(), found.costMinutes()))
                : Optional.empty();
    }

    /** Why there is no draft. */
    List<Obstacle> refusal() {
        if (pace.isHurried())
            return List.of(new Obstacle.NothingFits(Stops.of(setup).id(0), span.origin()));
        Span later = span.unbound();
        Availability longer =
                Availability.of(request.house(), later.origin(), later.until()).beside(request.besides());
        Refusal refusal = new Refusal(setup, span);
        List<Obstacle> tooLong = refusal.tooLong(longer);
        if (!tooLong.isEmpty()) return tooLong;
        ZoneId zone = request.house().zone();
        TimeGrid grid = resumption.on(
                TimeGrid.of(longer, zone, later.origin(), later.until(), stepsMinutes()[0], stepsMinutes()[1]));
        return refusal.why(new Search(QuickForms.of(setup), grid, wish(later, 0), pace.shortened(WHY_TIMES)));
    }

    private Search.Wish wish(Span asked, double margin) {
        int nights = request.house().nights().most();
        return new Search.Wish(
                asked.startFrom(), asked.startUntil(), asked.readyBy(), nights, rawC, margin, resumption.goingOn());
    }

    /** The grain as it goes into the steep. */
    static PieceState raw(Setup setup, double rawC) {
        Moisture moisture = Moisture.ofDryBasisRatio(setup.lot().moistureRatio());
        return PieceState.rawGrain(
                setup.dryMatterKg() / (1 - moisture.wetBasisFraction()),
                moisture,
                setup.models().steep().startChitRatio(),
                setup.style().kiln().colourBase().startEbc(),
                rawC);
    }
}
