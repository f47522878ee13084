package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import piecewright.plan.ActKind;
import piecewright.plan.Availability;
import piecewright.plan.Couched;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Seeded;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;
import piecewright.quantity.FractionRange;
import piecewright.quantity.HoursRange;
import piecewright.style.Couches;
import piecewright.style.GrowthSchedule;
import piecewright.style.HotCouchSchedule;
import piecewright.style.KilnSchedule;
import piecewright.style.KilnSchedule.Rung;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;
import piecewright.style.SteepSchedule;
import piecewright.style.StewSchedule;
import piecewright.style.WetCouchSchedule;

/** The search against trying everything, on seeded households with few acts and a coarse grid. */
class SearchProofTest {
    /** Trying everything from each start; no bound, no bucket, no rival cut. */
    private static final class Exhaustive {
        private final Route route;
        private double least = Double.POSITIVE_INFINITY;
        private double worstBoundOver;
        private long checks;
        private int mostNights;
        private boolean heaped;

        private final int heapStop;

        Exhaustive(Route route, int heapStop) {
            this.heapStop = heapStop;
            this.route = route;
        }

        double leastCost() {
            route.starts().forEach(this::follow);
            return least;
        }

        private void follow(Label label) {
            if (route.isGoal(label)) {
                List<Label> path = label.path();
                if (label.costMinutes() < least) heaped = path.stream().anyMatch(one -> one.stop() == heapStop);
                least = Math.min(least, label.costMinutes());
                mostNights = Math.max(mostNights, label.nights());
                for (Label before : path) {
                    double over = before.costMinutes() + route.boundMinutes(before) - label.costMinutes();
                    worstBoundOver = Math.max(worstBoundOver, over);
                    checks++;
                }
                return;
            }
            route.expand(label, this::follow);
        }
    }

    /** Costs found for one small problem. */
    private record Outcome(
            double everything, double complete, double usual, double boundOver, long checks, boolean heaped) {}

    private static Outcome solve(long seed, int immersions, ActKind last, int gridMinutes) {
        return solve(small(Seeded.request(seed), immersions, last), seed, last, gridMinutes);
    }

    private static Outcome solve(PlanRequest request, long seed, ActKind last, int gridMinutes) {
        Instant origin = LocalDate.of(2030, 5, 1 + (int) (seed % 7))
                .atStartOfDay(request.house().zone())
                .toInstant();
        Instant until = origin.plus(Duration.ofDays(
                last == ActKind.FLOOR ? 5 : request.style().couches().hot().isPresent() ? 15 : 12));
        Rooms rooms = new Rooms(request.house(), origin, until);
        Setup setup = new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, 4, new ArrayList<>())
                .orElseThrow();
        Availability availability = Availability.of(request.house(), origin, until);
        TimeGrid grid = TimeGrid.of(availability, request.house().zone(), origin, until, gridMinutes, gridMinutes);
        Search.Wish wish = new Search.Wish(
                origin,
                origin.plus(Duration.ofDays(1)),
                last == ActKind.ROAST ? origin.plus(Duration.ofDays(36)) : Instant.MAX,
                request.house().nights().most(),
                10,
                0);
        Effort usual = Effort.of(setup);
        Exhaustive exhaustive = new Exhaustive(
                search(setup, grid, wish, last, Effort.complete()).route(), heapStop(setup));
        double everything = exhaustive.leastCost();
        assertTrue(exhaustive.mostNights <= wish.mostNights(), "night acts, seed " + seed);
        return new Outcome(
                everything,
                cost(search(setup, grid, wish, last, Effort.complete())),
                cost(search(setup, grid, wish, last, usual)),
                exhaustive.worstBoundOver,
                exhaustive.checks,
                exhaustive.heaped);
    }

    private static int heapStop(Setup setup) {
        return setup.heaping().isPresent() ? Stops.of(setup).heap() : -1;
    }

    private static Search search(Setup setup, TimeGrid grid, Search.Wish wish, ActKind last, Effort effort) {
        return new Search(setup, grid, wish, last, effort);
    }

    private static double cost(Search search) {
        List<Search.Found> found = search.best(1);
        return found.isEmpty() ? Double.POSITIVE_INFINITY : found.get(0).costMinutes();
    }

    /** The pale style with few acts: few immersions, no wither unless asked for, one rung of heat. */
    static PlanRequest small(PlanRequest like, int immersions, ActKind last) {
        MaltStyle pale = like.style();
        KilnSchedule kiln = pale.kiln();
        MaltStyle style = new MaltStyle(
                pale.key(),
                pale.title(),
                pale.grains(),
                new SteepSchedule(0.42, new FractionRange(0.36, 0.47), 1, immersions),
                new GrowthSchedule(
                        0.75,
                        new FractionRange(0.5, 1.0),
                        0.40,
                        25,
                        20,
                        last == ActKind.LOAD ? new HoursRange(0, 24) : new HoursRange(0, 0)),
                new KilnSchedule(
                        List.of(new Rung(1, 50), new Rung(0.06, 85)),
                        kiln.cureC(),
                        kiln.cureHours(),
                        kiln.endMoistureFraction(),
                        kiln.colourBase()),
                pale.finish(),
                Couches.none(),
                last == ActKind.ROAST ? stewedAndRoasted() : OvenSchedule.none());
        return new PlanRequest(style, like.lot(), like.house(), like.amount(), like.when());
    }

    /** The couched seeded household and style, with as few acts as the pale one. */
    private static PlanRequest couched(long seed, boolean withers) {
        PlanRequest like = Couched.request(seed);
        MaltStyle style = like.style();
        KilnSchedule kiln = style.kiln();
        HotCouchSchedule hot = new HotCouchSchedule(
                0.40, new FractionRange(0.30, 0.47), 12, new HoursRange(4, 25), 60, new HoursRange(6, 15), 53);
        MaltStyle small = new MaltStyle(
                style.key(),
                style.title(),
                style.grains(),
                new SteepSchedule(0.44, new FractionRange(0.38, 0.48), 1, 1),
                new GrowthSchedule(
                        0.75, new FractionRange(0.4, 1.1), 0.40, 25, 20, new HoursRange(0, withers ? 30 : 0)),
                new KilnSchedule(
                        List.of(new Rung(1, 50), new Rung(0.06, 85)),
                        kiln.cureC(),
                        kiln.cureHours(),
                        kiln.endMoistureFraction(),
                        kiln.colourBase()),
                style.finish(),
                Couches.none().withHot(hot),
                OvenSchedule.none());
        return new PlanRequest(small, like.lot(), like.house(), like.amount(), like.when());
    }

    /** The seeded household, its steep too short to chit in the tub, allowed a wet couch under cloths or in a box. */
    private static PlanRequest heaped(long seed, int immersions, ActKind last) {
        PlanRequest like = small(Seeded.request(seed), immersions, last);
        MaltStyle style =
                like.style().withCouches(Couches.none().withWet(new WetCouchSchedule(25, 22, new HoursRange(8, 48))));
        PlanRequest boxed = Couched.request(seed);
        return new PlanRequest(
                style, like.lot(), seed % 2 == 0 ? boxed.house() : like.house(), like.amount(), like.when());
    }

    private static List<Outcome> solveHeaped(int seeds, int immersions, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> solve(heaped(seed, immersions, last), seed, last, gridMinutes))
                .toList();
    }

    private static List<Outcome> solveCouched(int seeds, boolean withers, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> solve(couched(seed, withers), seed, last, gridMinutes))
                .toList();
    }

    /** Cool enough for the kilns of the seeded households, which fill it once or twice. */
    private static OvenSchedule stewedAndRoasted() {
        return new OvenSchedule(
                Optional.of(new StewSchedule(70, 90, 120, 10)),
                Optional.of(new RoastSchedule(1.9, List.of(new RoastSchedule.HeatStep(90, 20, 40)), 0.06)));
    }

    private static List<Outcome> solveAll(int seeds, int immersions, ActKind last, int gridMinutes) {
        return LongStream.range(0, seeds)
                .parallel()
                .mapToObj(seed -> solve(seed, immersions, last, gridMinutes))
                .toList();
    }

    private static void prove(List<Outcome> outcomes, int leastSolvable) {
        long checks = 0;
        int solvable = 0;
        int close = 0;
        for (int seed = 0; seed < outcomes.size(); seed++) {
            Outcome one = outcomes.get(seed);
            assertEquals(one.everything(), one.complete(), 1e-6, "pruning off, seed " + seed);
            assertTrue(one.boundOver() < 1e-6, "bound over the truth by " + one.boundOver() + ", seed " + seed);
            checks += one.checks();
            if (one.everything() == Double.POSITIVE_INFINITY) continue;
            solvable++;
            assertTrue(one.usual() <= 1.05 * one.everything() + 1, "default pruning, seed " + seed + ": " + one);
            if (one.usual() <= 1.01 * one.everything() + 1) close++;
        }
        assertTrue(solvable >= leastSolvable, "solvable: " + solvable);
        assertTrue(close >= 0.95 * solvable, "within a hundredth: " + close + " of " + solvable);
        assertTrue(checks > 100L * solvable, "bound checks: " + checks);
    }

    @Test
    void theSteepAndCastingAreAsCheapAsTryingEverything() {
        prove(solveAll(200, 2, ActKind.FLOOR, 120), 80);
    }

    @Test
    void theWetCouchIsAsCheapAsTryingEverything() {
        List<Outcome> once = solveHeaped(120, 1, ActKind.FLOOR, 120);
        assertTrue(once.stream().filter(Outcome::heaped).count() >= 30, "heaps: " + once);
        prove(once, 40);
        prove(solveHeaped(40, 2, ActKind.FLOOR, 180), 10);
    }

    @Test
    void growthAfterTheWetCouchIsAsCheapAsTryingEverything() {
        prove(solveHeaped(40, 1, ActKind.LOAD, 240), 5);
    }

    @Test
    void growthAndWitherAreAsCheapAsTryingEverything() {
        prove(solveAll(60, 1, ActKind.LOAD, 180), 12);
    }

    @Test
    void kilningIsAsCheapAsTryingEverything() {
        prove(solveAll(40, 1, ActKind.DEROOT, 240), 5);
    }

    @Test
    void packingAndBreakingTheCouchAreAsCheapAsTryingEverything() {
        prove(solveCouched(40, false, ActKind.BREAK, 240), 10);
    }

    @Test
    void witheringForTheCouchIsAsCheapAsTryingEverything() {
        prove(solveCouched(48, true, ActKind.BREAK, 300), 5);
    }

    @Test
    void theKilnAfterTheCouchIsAsCheapAsTryingEverything() {
        prove(solveCouched(40, false, ActKind.LOAD, 300), 3);
    }

    @Test
    void stewAndRoastAreAsCheapAsTryingEverything() {
        prove(solveAll(40, 1, ActKind.ROAST, 240), 8);
    }
}
