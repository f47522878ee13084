package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.plan.PlanRequest.Amount;
import piecewright.plan.PlanRequest.When;
import piecewright.plan.Simulation.Course;
import piecewright.plan.search.UnderWay;

/** Makes a plan from a wish: screens the lot, chooses the kit, searches, simulates, describes. Pure. */
public final class Planner implements Plans {
    /** Judgement: kg of grain per kg of malt to begin with; the plan itself corrects it. */
    private static final double FIRST_GUESS_RATIO = 1.24;
    /** Judgement: the amount is right when the malt is within this share of the wish. */
    private static final double AMOUNT_TOLERANCE_FRACTION = 0.001;
    /** Judgement: the longest piece, with its wither and waits, from first steep to de-rooting. */
    private static final Duration LONGEST_PIECE = Duration.ofDays(21);

    /** Judgement: the longest that a piece under way still needs, from its first rest to de-rooting and roasts. */
    private static final Duration MOST_TO_COME = Duration.ofDays(16);
    /** Judgement: the same from the floor on. */
    private static final Duration MOST_TO_GROW = Duration.ofDays(14);
    /** Judgement: the same from the kiln on. */
    private static final Duration MOST_IN_THE_KILN = Duration.ofDays(10);

    /** Judgement: so late on the day of a wished start it counts as missed. */
    private static final Duration MISSED_BY = Duration.ofHours(2);
    /** Judgement: a missed start is made good within so many days. */
    private static final Duration LATER_START = Duration.ofDays(3);

    /** Judgement: a start moved by less is the same start. */
    private static final Duration ANOTHER_HOUR = Duration.ofMinutes(90);

    private final SetupMaker setups;
    private final Pace pace;

    public Planner(ModelParameters parameters) {
        this(new SetupMaker(parameters), Pace.usual());
    }

    private Planner(SetupMaker setups, Pace pace) {
        this.setups = setups;
        this.pace = pace;
    }

    @Override
    public Planner watchedBy(Watch watch) {
        return new Planner(setups, pace.watchedBy(watch));
    }

    @Override
    public Planner hurried() {
        return new Planner(setups, pace.hurried());
    }

    @Override
    public PlanResult apply(PlanRequest request) {
        return plan(request);
    }

    /** The plan, or why there is none. The same request gives the same result. */
    public PlanResult plan(PlanRequest request) {
        List<Obstacle> obstacles = new ArrayList<>(Screening.of(request.lot(), request.style()));
        if (!obstacles.isEmpty()) return new PlanResult.NotPossible(obstacles);
        return plan(request, Span.of(request), obstacles);
    }

    /** The best plan that begins on another day, or where only one day is asked for, at another hour; empty for none. */
    public Optional<RunnerUp> runnerUp(PlanRequest request, Plan chosen) {
        Span span = Span.of(request);
        ZoneId zone = request.house().zone();
        LocalDate day = LocalDate.ofInstant(chosen.startsAt(), zone);
        List<Span> otherDays = span.outside(Span.startOf(day, zone), Span.startOf(day.plusDays(1), zone));
        List<Span> others = otherDays.isEmpty()
                ? span.outside(
                        chosen.startsAt().minus(ANOTHER_HOUR), chosen.startsAt().plus(ANOTHER_HOUR))
                : otherDays;
        return others.parallelStream()
                .map(other -> plan(request, other, new ArrayList<>()))
                .flatMap(result -> result.match(planned -> Stream.of(planned.plan()), not -> Stream.empty()))
                .min(Comparator.comparingDouble(Plan::costMinutes))
                .map(plan -> new RunnerUp(plan, chosen.bill().against(plan.bill())));
    }

    private PlanResult plan(PlanRequest request, Span span, List<Obstacle> obstacles) {
        double grainKg = firstGuessKg(request.amount());
        Optional<Draft> draft = draft(request, span, grainKg, obstacles);
        for (int round = 0; round < 4 && draft.isPresent(); round++) {
            double neededKg = neededKg(request.amount(), draft.get(), grainKg);
            if (Math.abs(neededKg / grainKg - 1) < AMOUNT_TOLERANCE_FRACTION) break;
            grainKg = neededKg;
            Optional<Draft> again = resimulated(request, span, grainKg, draft.get());
            draft = again.isPresent() ? again : draft(request, span, grainKg, obstacles);
        }
        if (draft.isEmpty()) return notPossible(request, obstacles);
        Plan plan = new PlanWriter(request, draft.get().setup())
                .write(draft.get().course(), grainKg, draft.get().bill());
        return new PlanResult.Planned(Witnesses.shown(request, Optional.empty(), plan));
    }

    private PlanResult notPossible(PlanRequest request, List<Obstacle> obstacles) {
        if (!request.besides().isEmpty() && alone(request) instanceof PlanResult.Planned) {
            obstacles.add(0, Obstacle.HeldByOthers.of(request.besides()));
        }
        return new PlanResult.NotPossible(obstacles);
    }

    /** The wish without the others, looked for no longer than where something failed already. */
    private PlanResult alone(PlanRequest request) {
        return new Planner(setups, pace.afterNothing()).plan(request.beside(List.of()));
    }

    /** What a plan this planner made was made of; throws IllegalArgumentException when its kit no longer holds it. */
    public Blueprint blueprint(PlanRequest request, Plan plan) {
        Span span = Span.of(request);
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        List<Obstacle> obstacles = new ArrayList<>();
        Setup setup = setups.of(request, rooms, plan.outcome().rawGrainKg(), KitUsed.of(plan.acts()), obstacles)
                .orElseThrow(() -> new IllegalArgumentException("plan does not answer this request: " + obstacles));
        return Blueprint.of(request, plan, setup, span.origin(), rawC(setup, rooms));
    }

    /** What a piece takes of its house whose acts stand so; empty when its kit no longer holds so much grain. */
    public Optional<Booking> booking(String batch, PlanRequest request, double grainKg, List<Act> acts) {
        Span span = Span.of(request);
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        return setups.of(request, rooms, grainKg, KitUsed.of(acts), new ArrayList<>())
                .map(setup -> Booking.of(batch, setup, acts));
    }

    private Optional<Draft> draft(PlanRequest request, Span span, double grainKg, List<Obstacle> obstacles) {
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        return new KitChoice(setups, request, new KitChoice.Horizon(span, rooms, grainKg), pace).best(obstacles);
    }

    static double rawC(Setup setup, Rooms rooms) {
        return rooms.at(setup.outfit().soaking().place()).airC(0);
    }

    private Optional<Draft> resimulated(PlanRequest request, Span span, double grainKg, Draft draft) {
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        PlanRequest chosen = request.arranged(KitChoice.with(request.arrangement(), draft.setup()));
        Optional<Setup> setup = setups.of(chosen, rooms, grainKg, new ArrayList<>());
        if (setup.isEmpty() || !asLongAsSearchedFor(setup.get(), draft.setup())) return Optional.empty();
        double rawC = rawC(setup.get(), rooms);
        Course course =
                new Simulation(setup.get(), span.origin()).run(draft.timetable(), Searching.raw(setup.get(), rawC));
        return Verification.holds(setup.get(), course)
                ? Optional.of(new Draft(setup.get(), draft.timetable(), course, draft.bill(), draft.costMinutes()))
                : Optional.empty();
    }

    /** Whether stew and roasts keep somebody as long as they did when the timetable was made. */
    private static boolean asLongAsSearchedFor(Setup now, Setup then) {
        return StewBlock.of(now)
                        .map(StewBlock::minutes)
                        .equals(StewBlock.of(then).map(StewBlock::minutes))
                && RoastBlock.of(now)
                        .map(RoastBlock::minutes)
                        .equals(RoastBlock.of(then).map(RoastBlock::minutes));
    }

    private static double firstGuessKg(Amount amount) {
        return amount instanceof Amount.RawGrain raw
                ? raw.grainKg()
                : FIRST_GUESS_RATIO * ((Amount.FinishedMalt) amount).maltKg();
    }

    private static double neededKg(Amount amount, Draft draft, double grainKg) {
        if (amount instanceof Amount.RawGrain raw) return raw.grainKg();
        double usefulKg = Yield.usefulMaltKg(
                draft.course().finished(), draft.setup().lot().energyFraction());
        return grainKg * ((Amount.FinishedMalt) amount).maltKg() / usefulKg;
    }

    /**
     * When the search may look.
     *
     * @param origin first instant of all tables
     * @param readyBy when the malt must have rested; {@link Instant#MAX} when only the start is wished
     */
    record Span(Instant origin, Instant until, Instant startFrom, Instant startUntil, Instant readyBy) {
        static Span of(PlanRequest request) {
            ZoneId zone = request.house().zone();
            if (request.when() instanceof When.StartOn start) {
                Instant from = startOf(start.day(), zone);
                return new Span(
                        from,
                        from.plus(LONGEST_PIECE),
                        from,
                        startOf(start.day().plusDays(1), zone),
                        Instant.MAX);
            }
            When.ReadyBy wish = (When.ReadyBy) request.when();
            Instant readyBy = startOf(wish.day(), zone);
            double restDays = request.style().finish().restDays();
            Instant until = readyBy.minus(Duration.ofMinutes(Math.round(restDays * 24 * 60)))
                    .plus(Duration.ofHours((long) Rules.DEROOT_HARD_HOURS));
            double spareDays = request.style().finish().preferredRestDays() - restDays;
            Instant from = until.minus(LONGEST_PIECE).minus(Duration.ofMinutes(Math.round(spareDays * 24 * 60)));
            Instant earliest = startOf(wish.earliestStart(), zone);
            Instant origin = from.isBefore(earliest) ? earliest : startOf(LocalDate.ofInstant(from, zone), zone);
            Instant end = until.isAfter(origin) ? until : origin.plus(Duration.ofDays(1));
            return new Span(origin, end, origin, end, readyBy);
        }

        /** The same for a piece that was begun, or that must still be, as its plan says or as soon as may be. */
        Span goingOn(Begun begun, ZoneId zone) {
            if (!begun.visits().isEmpty()) {
                Instant first =
                        startOf(LocalDate.ofInstant(begun.visits().get(0).at(), zone), zone);
                Instant ends =
                        readyBy.equals(Instant.MAX) ? later(until, begun.now().plus(toCome(begun))) : until;
                return new Span(first.isBefore(origin) ? first : origin, ends, startFrom, startUntil, readyBy);
            }
            Instant from = begun.now().isAfter(startFrom) ? begun.now() : startFrom;
            boolean missed = readyBy.equals(Instant.MAX) && !from.isBefore(startUntil.minus(MISSED_BY));
            Instant startsBy = missed ? from.plus(LATER_START) : startUntil;
            Instant ends = missed ? startsBy.plus(LONGEST_PIECE) : until;
            return new Span(origin, ends, from, startsBy, readyBy);
        }

        /** The same with starts before one instant, and from another one on; those that leave no time are left out. */
        List<Span> outside(Instant from, Instant until) {
            return Stream.of(
                            new Span(origin, this.until, startFrom, from, readyBy),
                            new Span(origin, this.until, until, startUntil, readyBy))
                    .filter(span -> span.startFrom.isBefore(span.startUntil))
                    .toList();
        }

        /** The same for a piece under way that may be ready when it will. */
        Span late(Begun begun) {
            Instant ends = later(until, begun.now().plus(toCome(begun)));
            return new Span(origin, ends, startFrom, startUntil, Instant.MAX);
        }

        private static Duration toCome(Begun begun) {
            return switch (UnderWay.began(begun.visits()).kind()) {
                case SOAK, DRAIN, HEAP -> MOST_TO_COME;
                case FLOOR, WITHER, PACK, BREAK -> MOST_TO_GROW;
                default -> MOST_IN_THE_KILN;
            };
        }

        private static Instant later(Instant one, Instant other) {
            return one.isAfter(other) ? one : other;
        }

        /** The same with no day to be ready by and time to spare. */
        Span unbound() {
            Instant later = until.isAfter(origin) ? until : origin;
            return new Span(origin, later.plus(LONGEST_PIECE), startFrom, later, Instant.MAX);
        }

        private static Instant startOf(LocalDate day, ZoneId zone) {
            return day.atStartOfDay(zone).toInstant();
        }
    }
}
