package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import piecewright.plan.ActKind;
import piecewright.plan.Bill;
import piecewright.plan.CouchRules;
import piecewright.plan.Couching;
import piecewright.plan.HeapRules;
import piecewright.plan.Heaping;
import piecewright.plan.Outfit.Growing;
import piecewright.plan.Pace;
import piecewright.plan.Practice;
import piecewright.plan.Rules;
import piecewright.plan.Setup;
import piecewright.plan.Slip;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;
import piecewright.process.Surroundings;
import piecewright.process.germination.Bed;

/** Finds timetables for one piece. One instance per search, used by one thread. */
public final class Search {
    /** Judgement: minutes of work of a turning or stirring. */
    public static final int TURN_MINUTES = 10;
    /** Judgement: a bed turned or stirred less than three hours ago has nothing to gain from it. */
    private static final int SOONEST_TURN_MINUTES = 180;
    /** Judgement: where gates are asked to be drier by a point, growth is asked to end this many points inside. */
    private static final double GROWTH_MARGINS_RATIO = 4;
    /** Judgement: minutes to read the thermometer and smell a couch. */
    public static final int CHECK_MINUTES = 5;
    /** Judgement: nothing in the kiln waits longer between stirrings while the bed is wet. */
    private static final int STIR_HARD_MINUTES = 12 * 60;
    /** Judgement: practice, stir every 4 h, 8 softly. */
    private static final double STIR_PREFERRED_HOURS = 4;
    /** Judgement: practice, stir every 4 h, 8 softly. */
    private static final double STIR_SOFT_HOURS = 8;

    private final Space space;
    private final FloorLegs.Beds beds;
    private final Optional<HeapLegs.Heaps> heaps;
    private final Optional<CouchLegs.Couch> couch;
    private final TurnChains stirs;
    private final Bound bound;
    private final PieceRoute route;
    private final FloorLegs floorLegs;
    private final Optional<HeapLegs> heapLegs;
    private final Optional<TakenUp> takenUp;
    private final WrittenOut writtenOut;
    private final boolean moves;
    private final Pace pace;

    /**
     * What to search for.
     *
     * @param startFrom first steep not before this
     * @param startUntil nor at or after this
     * @param readyBy when the malt must have rested; the end of time when only the start is given
     * @param mostNights night acts allowed
     * @param rawC temperature of the dry grain, °C
     * @param gateMarginFraction how much drier than its figure a gate must find the malt, wet basis; below 0 it may
     *     be so much wetter, where something else decides
     * @param goingOn what was done already
     */
    public record Wish(
            Instant startFrom,
            Instant startUntil,
            Instant readyBy,
            int mostNights,
            double rawC,
            double gateMarginFraction,
            GoingOn goingOn) {
        public Wish(
                Instant startFrom,
                Instant startUntil,
                Instant readyBy,
                int mostNights,
                double rawC,
                double gateMarginFraction) {
            this(startFrom, startUntil, readyBy, mostNights, rawC, gateMarginFraction, GoingOn.afresh());
        }
    }

    public Search(Setup setup, TimeGrid grid, Wish wish) {
        this(QuickForms.of(setup), grid, wish, Pace.usual());
    }

    public Search(QuickForms forms, TimeGrid grid, Wish wish, Pace pace) {
        this(forms, grid, wish, lastAct(forms.setup()), Effort.of(forms.setup()), Optional.empty(), pace);
    }

    /** A search that moves the acts of a timetable. */
    public static Search near(QuickForms forms, TimeGrid grid, Wish wish, Nearby nearby, Pace pace) {
        Effort effort = Effort.of(forms.setup());
        return new Search(forms, grid, wish, lastAct(forms.setup()), effort, Optional.of(nearby), pace);
    }

    private static ActKind lastAct(Setup setup) {
        return setup.style().oven().roast().isPresent() ? ActKind.ROAST : ActKind.DEROOT;
    }

    /** A search that ends at an earlier act: for tests that try every plan. */
    Search(Setup setup, TimeGrid grid, Wish wish, ActKind last, Effort effort) {
        this(QuickForms.of(setup), grid, wish, last, effort, Optional.empty(), Pace.endless());
    }

    private Search(
            QuickForms forms,
            TimeGrid grid,
            Wish wish,
            ActKind last,
            Effort effort,
            Optional<Nearby> nearby,
            Pace pace) {
        Setup setup = forms.setup();
        Stops stops = forms.stops();
        Rules rules = new Rules(
                setup.style(),
                setup.lot().waterSensitiveFraction(),
                GROWTH_MARGINS_RATIO * wish.gateMarginFraction(),
                wish.goingOn().piece().isPresent());
        KilnHeat heat = new KilnHeat(forms, wish.gateMarginFraction());
        this.takenUp = wish.goingOn().piece().map(piece -> new TakenUp(piece, stops, grid));
        Held held = Held.of(wish.goingOn().published(), stops, grid.origin());
        Beginnings beginnings = new Beginnings(stops, grid, wish.mostNights(), held, nearby);
        pace.watch().beginning();
        this.space = new Space(forms, grid, rules, heat, wish.mostNights(), beginnings, new Toll());
        var turning = new TurnChains.Turning(TURN_MINUTES, SOONEST_TURN_MINUTES, held::innerCostMinutes);
        this.beds = beds(forms, grid, turning);
        this.couch =
                setup.couching().map(couching -> couch(forms, couching, grid, held, takenUp.flatMap(TakenUp::couched)));
        this.heaps = setup.heaping().map(heaping -> heaps(setup, heaping, grid, held));
        this.stirs = new TurnChains(grid, Search::stirGap, turning, STIR_HARD_MINUTES, 4 * 24 * 60);
        int goal = IntStream.range(0, stops.count())
                .filter(stop -> stops.kind(stop) == last)
                .max()
                .orElseThrow();
        Duration busy = Duration.ofMinutes(stops.busyBeforeRestMinutes());
        KilnLegs.EndCost endCost = at -> endCost(rules, grid.instant(at).plus(busy), wish.readyBy());
        SteepLegs steepLegs = new SteepLegs(space);
        ChitClock clock = new ChitClock(space, steepLegs.ripeChitRatio(), wish.rawC());
        this.bound = new Bound(space, new Bound.Chains(beds, stirs, heaps, couch), clock, endCost, goal);
        int lastMoved = takenUp.map(TakenUp::turnedAt).orElse(0);
        this.floorLegs = new FloorLegs(space, beds, lastMoved);
        this.heapLegs = heaps.map(one -> new HeapLegs(space, one, steepLegs.ripeChitRatio(), lastMoved));
        var legs = new PieceRoute.Legs(
                steepLegs,
                heapLegs,
                floorLegs,
                couch.map(one -> new CouchLegs(space, one)),
                new KilnLegs(space, stirs),
                endCost);
        List<Label> starts = takenUp.map(taken -> List.of(taken.label()))
                .orElseGet(() -> PieceRoute.starts(space, raw(setup, wish.rawC()), starts(grid, wish)));
        this.route = new PieceRoute(
                space,
                legs,
                starts,
                bound,
                new PieceRoute.Ending(
                        goal, effort, nearby.map(Nearby::belowMinutes).orElse(pace.belowMinutes())),
                new KitFree(setup.closures(), stops, grid));
        this.moves = nearby.isPresent();
        this.pace = pace;
        this.writtenOut = new WrittenOut(space, route, this::inner, takenUp);
    }

    /** The cheapest timetables found, cheapest first, at most so many. */
    public List<Found> best(int most) {
        List<Found> found = new ArrayList<>();
        for (Label goal : goals(most, label -> {})) {
            found.add(found(goal));
        }
        return found;
    }

    /** A search that only moves acts has a timetable already, and finds none when it is the best. */
    private List<Label> goals(int most, Consumer<Label> watcher) {
        return moves ? BestFirst.goals(route, most, watcher, pace) : BestFirst.goalsIfAny(route, most, watcher, pace);
    }

    /**
     * The same acts at the same instants as given, after what was done, without turnings when nobody is there; empty when
     * the rules or hours forbid it.
     */
    public Optional<Found> exactly(List<Visit> rest) {
        List<Visit> bounding =
                rest.stream().filter(visit -> UnderWay.bounds(visit.kind())).toList();
        Optional<Label> label = takenUp.map(TakenUp::label);
        for (Visit visit : bounding) {
            int at = space.grid().firstAtOrAfter(space.grid().minuteOf(visit.at()));
            List<Label> next = new ArrayList<>();
            label.ifPresentOrElse(from -> route.expand(from, next::add), () -> next.addAll(route.starts()));
            label = next.stream()
                    .filter(one -> one.at() == at
                            && space.grid().instant(at).equals(visit.at())
                            && space.stops().id(one.stop()).equals(Stops.first(visit.id())))
                    .min(Comparator.comparingDouble(Label::costMinutes));
            if (label.isEmpty()) return Optional.empty();
        }
        if (label.isEmpty() || !route.isGoal(label.get())) return Optional.empty();
        List<Visit> visits = new ArrayList<>(takenUp.map(TakenUp::visits).orElse(List.of()));
        rest.stream()
                .filter(visit -> UnderWay.bounds(visit.kind()) || canTurn(visit.at()) && apart(visit, bounding))
                .forEach(visits::add);
        Label goal = label.get();
        return Optional.of(new Found(new Timetable(visits), writtenOut.bill(goal), goal.costMinutes()));
    }

    /** Whether what is done inside a phase overlaps no act that bounds one: a stir due as the cure begins is left out. */
    private boolean apart(Visit inner, List<Visit> bounding) {
        return bounding.stream()
                .noneMatch(
                        visit -> inner.at().isBefore(over(visit)) && visit.at().isBefore(over(inner)));
    }

    private Instant over(Visit visit) {
        return visit.at().plus(Duration.ofMinutes(space.stops().minutes(visit)));
    }

    /** Whether somebody can turn at this very instant. */
    private boolean canTurn(Instant instant) {
        TimeGrid grid = space.grid();
        int at = grid.firstAtOrAfter(grid.minuteOf(instant));
        return at < grid.size() && grid.instant(at).equals(instant) && grid.fits(at, TURN_MINUTES);
    }

    /** A timetable, its cost by the quick forms in cost-minutes, and what makes it up. */
    public record Found(Timetable timetable, Bill bill, double costMinutes) {}

    /** Id of the act that no candidate can begin and carry on from, if there is one. */
    public Optional<String> closedAct() {
        int stop = bound.lastClosedStop();
        return stop < 0 ? Optional.empty() : Optional.of(space.stops().firstId(stop));
    }

    /** The cheapest timetable if there is one, and how far the search came; for the report when nothing fits. */
    public Outcome outcome() {
        int[] stop = {0};
        Instant[] at = {space.grid().origin()};
        List<Label> goals = goals(1, label -> {
            if (label.stop() > stop[0]) {
                stop[0] = label.stop();
                at[0] = space.grid().instant(label.at());
            }
        });
        Optional<Found> found = goals.stream().map(this::found).findFirst();
        return new Outcome(found, space.stops().firstId(stop[0]), at[0]);
    }

    /** How far a search came: the furthest act any label reached, and when. */
    public record Outcome(Optional<Found> found, String furthestActId, Instant furthestAt) {}

    Route route() {
        return route;
    }

    private static double endCost(Rules rules, Instant off, Instant readyBy) {
        if (readyBy.equals(Instant.MAX)) return 0;
        return rules.restsBeforeReadyBy(Duration.between(off, readyBy).toMinutes() / (24 * 60.0));
    }

    private static Grain raw(Setup setup, double rawC) {
        double ratio = setup.lot().moistureRatio();
        return new Grain(ratio, ratio, ratio, 0, setup.models().steep().startChitRatio(), 0, 1, rawC);
    }

    private static List<Integer> starts(TimeGrid grid, Wish wish) {
        return IntStream.range(0, grid.size())
                .filter(at -> grid.coarse(at)
                        && !grid.instant(at).isBefore(wish.startFrom())
                        && grid.instant(at).isBefore(wish.startUntil()))
                .boxed()
                .toList();
    }

    private static double stirGap(int fromMinute, int untilMinute) {
        return new Slip(0, 0, STIR_PREFERRED_HOURS, STIR_SOFT_HOURS, STIR_HARD_MINUTES / 60.0)
                .costMinutes((untilMinute - fromMinute) / 60.0);
    }

    private static FloorLegs.Beds beds(QuickForms forms, TimeGrid grid, TurnChains.Turning turning) {
        Setup setup = forms.setup();
        var outfit = setup.outfit();
        TurnChains growing = turnings(setup, outfit.growing(), setup.air().floor(), grid, turning);
        boolean same = outfit.withering().equals(outfit.growing());
        return new FloorLegs.Beds(
                growing,
                same ? growing : turnings(setup, outfit.withering(), setup.air().wither(), grid, turning),
                forms.floor(),
                forms.wither());
    }

    private static CouchLegs.Couch couch(
            QuickForms forms, Couching couching, TimeGrid grid, Held held, Optional<UnderWay.Standing> heating) {
        CouchRules rules = new CouchRules(couching.schedule());
        TurnChains checks = new TurnChains(
                grid,
                new CouchLooks(rules, 0),
                new TurnChains.Turning(CHECK_MINUTES, Stops.PACK_MINUTES, held::innerCostMinutes),
                (int) (60 * couching.schedule().checks().highHours()),
                (int) (60 * couching.schedule().longestHours()));
        return new CouchLegs.Couch(rules, new CouchCurves(forms.setup(), grid, heating), checks, forms.wither());
    }

    private static HeapLegs.Heaps heaps(Setup setup, Heaping heaping, TimeGrid grid, Held held) {
        HeapRules rules = HeapRules.of(setup);
        double riseK = heaping.expected().riseK();
        TurnChains looks = new TurnChains(
                grid,
                (from, until) -> rules.lookSlip(heaping.air().airC((from + until) / 120.0) + riseK)
                        .costMinutes((until - from) / 60.0),
                new TurnChains.Turning(CHECK_MINUTES, Stops.HEAP_MINUTES, held::innerCostMinutes),
                (int) (60 * rules.longestLookHours()),
                (int) (60 * rules.longestHours()));
        return new HeapLegs.Heaps(rules, looks);
    }

    private static TurnChains turnings(
            Setup setup, Growing spread, Surroundings air, TimeGrid grid, TurnChains.Turning turning) {
        double depthCm = spread.depthCm();
        var limits = Practice.turning(depthCm);
        IntToDoubleFunction degrees = expectedDegreeMinutes(setup, spread, air, grid);
        return new TurnChains(
                grid,
                TurnChains.byTemperature(limits, Practice.preferredTurnHours(depthCm), degrees),
                turning,
                (int) (60 * limits.longestHours()),
                FloorLegs.LONGEST_GROWTH_MINUTES);
    }

    /** Degree-minutes of a bed in full growth since the origin, by quarter hours. */
    private static IntToDoubleFunction expectedDegreeMinutes(
            Setup setup, Growing spread, Surroundings air, TimeGrid grid) {
        int last = grid.size() == 0 ? 0 : grid.minute(grid.size() - 1);
        double[] sum = new double[last / 15 + 3];
        Bed bed = new Bed(setup.models().growth());
        double depthM = spread.depthCm() / 100;
        double dryKgPerM2 = setup.dryMatterKg() / spread.areaM2();
        double wet = setup.style().steep().targetFraction();
        for (int i = 1; i < sum.length; i++) {
            double airC = air.airC((i - 0.5) / 4);
            double heatW = setup.models().metabolism().heatWPerKgDry(airC + 1, wet, 1);
            sum[i] = sum[i - 1] + 15 * (airC + bed.steadyRiseK(heatW, depthM, dryKgPerM2));
        }
        return minute -> {
            int below = minute / 15;
            return sum[below] + (sum[below + 1] - sum[below]) * (minute - 15 * below) / 15;
        };
    }

    /** Turnings, looks and stirrings inside the phase between two acts. */
    private List<Integer> inner(Label begins, Label ends) {
        return switch (space.stops().kind(begins.stop())) {
            case FLOOR -> beds.growing().turns(floorLegs.turnedAt(begins), ends.at());
            case WITHER -> beds.withering().turns(floorLegs.turnedAt(begins), ends.at());
            case HEAP -> {
                int looked = heapLegs.orElseThrow().lookedAt(begins);
                yield heaps.orElseThrow().looks().turns(looked, ends.at());
            }
            case PACK -> couch.orElseThrow().checks().turns(begins.at(), ends.at());
            case LOAD -> {
                int dryUntil = new KilnLegs(space, stirs).wetUntilMinute(begins);
                int next = space.grid().minute(ends.at());
                yield stirs.turnsUntil(space.notYetDrying(begins), Math.min(next, dryUntil), next);
            }
            default -> List.of();
        };
    }

    private Found found(Label goal) {
        return new Found(writtenOut.timetable(goal), writtenOut.bill(goal), goal.costMinutes());
    }
}
