package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Optional;
import piecewright.plan.Planner.Span;
import piecewright.plan.search.Search;
import piecewright.plan.search.TimeGrid;

/** A request as the planner poses it to its search, on a grid of one's own: for those who solve it in another way. */
public record Posed(Setup setup, TimeGrid grid, Search.Wish wish) {
    /** How far apart candidate instants lie: up to the kiln, and at it. */
    public record Steps(int coarseMinutes, int fineMinutes) {
        /** Those of the planner's first search for a piece without couches. */
        public static Steps usual() {
            return new Steps(120, 30);
        }
    }

    /** Empty when the kit cannot hold the grain. */
    public static Optional<Posed> of(PlanRequest request, Steps steps) {
        return of(request, Span.of(request), steps);
    }

    /** Begun and ended within so many days of the wished start, on whichever of them. */
    public static Optional<Posed> within(int days, PlanRequest request, Steps steps) {
        Instant from = Span.of(request).startFrom();
        Instant until = from.plus(Duration.ofDays(days));
        return of(request, new Span(from, until, from, until, Instant.MAX), steps);
    }

    /** Begun within so many days of the wished start, and ended so many days after those. */
    public static Optional<Posed> begun(int startDays, int daysAfter, PlanRequest request, Steps steps) {
        Instant from = Span.of(request).startFrom();
        Instant startUntil = from.plus(Duration.ofDays(startDays));
        Instant until = startUntil.plus(Duration.ofDays(daysAfter));
        return of(request, new Span(from, until, from, startUntil, Instant.MAX), steps);
    }

    private static Optional<Posed> of(PlanRequest request, Span span, Steps steps) {
        Rooms rooms = new Rooms(request.house(), span.origin(), span.until());
        double grainKg = ((PlanRequest.Amount.RawGrain) request.amount()).grainKg();
        return new SetupMaker(ModelParameters.defaults())
                .of(request, rooms, grainKg, new ArrayList<>())
                .map(setup -> new Posed(setup, grid(request, span, steps), wish(request, span, rooms, setup)));
    }

    private static TimeGrid grid(PlanRequest request, Span span, Steps steps) {
        Availability hours = Availability.of(request.house(), span.origin(), span.until());
        return TimeGrid.of(
                hours, request.house().zone(), span.origin(), span.until(), steps.coarseMinutes(), steps.fineMinutes());
    }

    private static Search.Wish wish(PlanRequest request, Span span, Rooms rooms, Setup setup) {
        double rawC = rooms.at(setup.outfit().soaking().place()).airC(0);
        int nights = request.house().nights().most();
        return new Search.Wish(span.startFrom(), span.startUntil(), span.readyBy(), nights, rawC, 0);
    }
}
