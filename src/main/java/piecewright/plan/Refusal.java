package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Planner.Span;
import piecewright.plan.search.Search;

/** Says why a search found nothing. */
final class Refusal {
    private final Setup setup;
    private final Span span;

    Refusal(Setup setup, Span span) {
        this.setup = setup;
        this.span = span;
    }

    /**
     * @param search the search that failed
     * @param later the same search without a day to be ready by, over a longer horizon
     */
    List<Obstacle> why(Search search, Search later) {
        if (!span.readyBy().equals(Instant.MAX)) {
            List<Search.Found> unbound = later.best(1);
            if (!unbound.isEmpty()) return List.of(tooSoon(unbound.get(0).timetable()));
        }
        Optional<String> closed = later.closedAct();
        if (closed.isPresent()) {
            return List.of(new Obstacle.NobodyThere(closed.get(), span.origin(), span.until()));
        }
        Search.Furthest furthest = search.furthest();
        return List.of(new Obstacle.NothingFits(furthest.actId(), furthest.at()));
    }

    private Obstacle tooSoon(Timetable timetable) {
        Instant off = timetable.first(ActKind.OFF).at();
        Duration rest = Duration.ofMinutes(Math.round(setup.style().finish().restDays() * 24 * 60));
        return new Obstacle.TooSoon(span.readyBy(), Duration.between(span.readyBy(), off.plus(rest)));
    }
}
