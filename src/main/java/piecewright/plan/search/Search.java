package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import piecewright.plan.ActKind;
import piecewright.plan.CouchRules;
import piecewright.plan.Couching;
import piecewright.plan.Outfit.Growing;
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
    /** Judgement: minutes to read the thermometer and smell the pile. */
    public static final int CHECK_MINUTES = 5;
    /** Judgement: nothing in the kiln waits longer between stirrings while the bed is wet. */
    private static final int STIR_HARD_MINUTES = 12 * 60;
    /** Judgement: practice, stir every 4 h, 8 softly. */
    private static final double STIR_PREFERRED_HOURS = 4;
    /** Judgement: practice, stir every 4 h, 8 softly. */
    private static final double STIR_SOFT_HOURS = 8;

    private final Space space;
    private final FloorLegs.Beds beds;
    private final Optional<CouchLegs.Couch> couch;
    private final TurnChains stirs;
    private final Bound bound;
    private final PieceRoute route;

    /**
     * What to search for.
     *
     * @param startFrom first steep not before this
     * @param startUntil nor at or after this
     * @param readyBy when the malt must have rested; the end of time when only the start is given
     * @param mostNights night acts allowed
     * @param rawC temperature of the dry grain, °C
     * @param gateMarginFraction how much drier than its figure a gate must find the malt, wet basis, 0 or more
     */
    public record Wish(
            Instant startFrom,
            Instant startUntil,
            Instant readyBy,
            int mostNights,
            double rawC,
            double gateMarginFraction) {}

    public Search(Setup setup, TimeGrid grid, Wish wish) {
        this(setup, grid, wish, ActKind.DEROOT, Effort.usual());
    }

    /** A search that ends at an earlier act: for tests that try every plan. */
    Search(Setup setup, TimeGrid grid, Wish wish, ActKind last, Effort effort) {
        Stops stops = Stops.of(
                setup.style(),
                setup.outfit().drying().hottestDryC(),
                setup.outfit().drying().cureC());
        Rules rules = new Rules(setup.style(), setup.lot().waterSensitiveFraction());
        this.space = new Space(
                setup, stops, grid, rules, new KilnHeat(setup, stops, wish.gateMarginFraction()), wish.mostNights());
        this.beds = beds(setup, grid);
        this.couch = setup.couching().map(couching -> couch(setup, couching, grid));
        this.stirs = new TurnChains(grid, Search::stirGap, TURN_MINUTES, STIR_HARD_MINUTES, 4 * 24 * 60);
        int goal = IntStream.range(0, stops.count())
                .filter(stop -> stops.kind(stop) == last)
                .max()
                .orElseThrow();
        KilnLegs.EndCost endCost = at -> endCost(rules, grid.instant(at), wish.readyBy());
        SteepLegs steepLegs = new SteepLegs(space);
        ChitClock clock = new ChitClock(space, steepLegs.ripeChitRatio(), wish.rawC());
        this.bound = new Bound(space, new Bound.Chains(beds, stirs, couch), clock, endCost, goal);
        var legs = new PieceRoute.Legs(
                steepLegs,
                new FloorLegs(space, beds),
                couch.map(one -> new CouchLegs(space, one)),
                new KilnLegs(space, stirs),
                endCost);
        this.route = new PieceRoute(
                space, legs, raw(setup, wish.rawC()), starts(grid, wish), bound, new PieceRoute.Ending(goal, effort));
    }

    /** The cheapest timetables found, cheapest first, at most so many. */
    public List<Found> best(int most) {
        List<Found> found = new ArrayList<>();
        for (Label goal : BestFirst.goals(route, most, label -> {})) {
            found.add(new Found(timetable(goal), goal.costMinutes()));
        }
        return found;
    }

    /** A timetable and its cost by the quick forms, cost-minutes. */
    public record Found(Timetable timetable, double costMinutes) {}

    /** Id of the act that no candidate can begin and carry on from, if there is one. */
    public Optional<String> closedAct() {
        int stop = bound.lastClosedStop();
        return stop < 0 ? Optional.empty() : Optional.of(space.stops().id(stop));
    }

    /** The cheapest timetable if there is one, and how far the search came; for the report when nothing fits. */
    public Outcome outcome() {
        int[] stop = {0};
        Instant[] at = {space.grid().origin()};
        List<Label> goals = BestFirst.goals(route, 1, label -> {
            if (label.stop() > stop[0]) {
                stop[0] = label.stop();
                at[0] = space.grid().instant(label.at());
            }
        });
        Optional<Found> found = goals.stream()
                .map(goal -> new Found(timetable(goal), goal.costMinutes()))
                .findFirst();
        return new Outcome(found, space.stops().id(stop[0]), at[0]);
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

    private static FloorLegs.Beds beds(Setup setup, TimeGrid grid) {
        var outfit = setup.outfit();
        TurnChains growing = turnings(setup, outfit.growing(), setup.air().floor(), grid);
        boolean same = outfit.withering().equals(outfit.growing());
        return new FloorLegs.Beds(
                growing,
                same ? growing : turnings(setup, outfit.withering(), setup.air().wither(), grid));
    }

    private static CouchLegs.Couch couch(Setup setup, Couching couching, TimeGrid grid) {
        CouchRules rules = new CouchRules(couching.schedule());
        Slip gap = rules.checkSlip();
        TurnChains checks = new TurnChains(
                grid,
                (from, until) -> gap.costMinutes((until - from) / 60.0),
                CHECK_MINUTES,
                (int) (60 * gap.hardHours()),
                (int) (60 * couching.schedule().longestHours()));
        return new CouchLegs.Couch(rules, new CouchCurves(setup, grid), checks);
    }

    private static TurnChains turnings(Setup setup, Growing spread, Surroundings air, TimeGrid grid) {
        double depthCm = spread.depthCm();
        var limits = Practice.turning(depthCm);
        IntToDoubleFunction degrees = expectedDegreeMinutes(setup, spread, air, grid);
        return new TurnChains(
                grid,
                TurnChains.byTemperature(limits, Practice.preferredTurnHours(depthCm), degrees),
                TURN_MINUTES,
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

    private Timetable timetable(Label goal) {
        List<Visit> visits = new ArrayList<>();
        List<Label> path = goal.path();
        int[] numbers = {0, 0, 0};
        for (int i = 0; i < path.size(); i++) {
            Label label = path.get(i);
            visits.add(new Visit(
                    space.stops().id(label.stop()),
                    space.stops().kind(label.stop()),
                    space.stops().number(label.stop()),
                    space.grid().instant(label.at())));
            if (i + 1 < path.size()) addInner(visits, label, path.get(i + 1), numbers);
        }
        return new Timetable(visits);
    }

    private void addInner(List<Visit> visits, Label label, Label next, int[] numbers) {
        ActKind kind = space.stops().kind(label.stop());
        TimeGrid grid = space.grid();
        if (kind == ActKind.FLOOR || kind == ActKind.WITHER) {
            TurnChains turns = kind == ActKind.FLOOR ? beds.growing() : beds.withering();
            for (int at : turns.turns(label.at(), next.at())) {
                visits.add(new Visit("floor.turn-" + ++numbers[0], ActKind.TURN, numbers[0], grid.instant(at)));
            }
        } else if (kind == ActKind.PACK) {
            for (int at : couch.orElseThrow().checks().turns(label.at(), next.at())) {
                visits.add(new Visit("couch.check-" + ++numbers[2], ActKind.CHECK, numbers[2], grid.instant(at)));
            }
        } else if (kind == ActKind.LOAD) {
            int wetUntil = Math.min(grid.minute(next.at()), new KilnLegs(space, stirs).wetUntilMinute(label));
            for (int at : stirs.turnsUntil(label.at(), wetUntil)) {
                visits.add(new Visit("kiln.stir-" + ++numbers[1], ActKind.STIR, numbers[1], grid.instant(at)));
            }
        }
    }
}
