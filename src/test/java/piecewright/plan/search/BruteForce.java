package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import piecewright.plan.ActKind;
import piecewright.plan.Availability;
import piecewright.plan.ModelParameters;
import piecewright.plan.PlanRequest;
import piecewright.plan.Rooms;
import piecewright.plan.Setup;
import piecewright.plan.SetupMaker;

/** Small problems solved by trying everything, and what the search must make of them. */
final class BruteForce {
    private BruteForce() {}

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

    /** Costs found for one small problem, infinite for none: trying everything, unpruned, with the usual effort. */
    record Outcome(double everything, double complete, double usual, double boundOver, long checks, boolean heaped) {
        boolean solvable() {
            return everything < Double.POSITIVE_INFINITY;
        }
    }

    /** The problem up to its last act, with so much grain, begun on one day, in candidates so far apart. */
    static Outcome solve(PlanRequest request, double grainKg, long seed, ActKind last, int gridMinutes) {
        Instant origin = LocalDate.of(2030, 5, 1 + (int) (seed % 7))
                .atStartOfDay(request.house().zone())
                .toInstant();
        Instant until = origin.plus(Duration.ofDays(
                last == ActKind.FLOOR ? 5 : request.style().couches().hot().isPresent() ? 15 : 12));
        Rooms rooms = new Rooms(request.house(), origin, until);
        Setup setup = new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, grainKg, new ArrayList<>())
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

    /** That the search does as well on every problem, and that so many of them have a solution. */
    static void prove(List<Outcome> outcomes, int leastSolvable) {
        long checks = 0;
        int solvable = 0;
        int close = 0;
        for (int seed = 0; seed < outcomes.size(); seed++) {
            Outcome one = outcomes.get(seed);
            assertEquals(one.everything(), one.complete(), 1e-6, "pruning off, seed " + seed);
            assertTrue(one.boundOver() < 1e-6, "bound over the truth by " + one.boundOver() + ", seed " + seed);
            checks += one.checks();
            if (!one.solvable()) continue;
            solvable++;
            assertTrue(one.usual() <= 1.05 * one.everything() + 1, "default pruning, seed " + seed + ": " + one);
            if (one.usual() <= 1.01 * one.everything() + 1) close++;
        }
        assertTrue(solvable >= leastSolvable, "solvable: " + solvable);
        assertTrue(close >= 0.95 * solvable, "within a hundredth: " + close + " of " + solvable);
        assertTrue(checks > 100L * solvable, "bound checks: " + checks);
    }
}
