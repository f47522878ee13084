package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Planner.Span;
import piecewright.plan.search.Search;
import piecewright.plan.search.Stops;

/** Says why a search found nothing. */
final class Refusal {
    private final Setup setup;
    private final Span span;

    Refusal(Setup setup, Span span) {
        this.setup = setup;
        this.span = span;
    }

    /** Attended blocks that are longer than anybody ever stays. */
    List<Obstacle> tooLong(Availability availability) {
        Duration longest = availability.longestOfOnePerson();
        List<Obstacle> obstacles = new ArrayList<>();
        StewBlock.of(setup).ifPresent(stew -> {
            Duration needed = Duration.ofMinutes(stew.minutes() + Stops.LOAD_MINUTES);
            if (needed.compareTo(longest) > 0) {
                obstacles.add(new Obstacle.BlockTooLong(Stops.STEW_ID, needed, longest));
            }
        });
        RoastBlock.of(setup).ifPresent(roast -> {
            Duration needed = Duration.ofMinutes(roast.minutes());
            if (needed.compareTo(longest) > 0) {
                obstacles.add(new Obstacle.BlockTooLong("oven.roast", needed, longest));
            }
        });
        return obstacles;
    }

    /** @param later the search that failed, without a day to be ready by and over a longer horizon */
    List<Obstacle> why(Search later) {
        Search.Outcome outcome = later.outcome();
        if (outcome.found().isPresent() && !span.readyBy().equals(Instant.MAX)) {
            return List.of(tooSoon(outcome.found().get().timetable()));
        }
        Optional<String> closed = later.closedAct();
        if (closed.isPresent()) {
            return List.of(new Obstacle.NobodyThere(closed.get(), span.origin(), span.until()));
        }
        return List.of(new Obstacle.NothingFits(outcome.furthestActId(), outcome.furthestAt()));
    }

    private Obstacle tooSoon(Timetable timetable) {
        Timetable.Visit last = timetable.restsFrom();
        Duration busy =
                Duration.ofMinutes(RoastBlock.of(setup).map(RoastBlock::minutes).orElse(0));
        Instant off = last.at().plus(busy);
        Duration rest = Duration.ofMinutes(Math.round(setup.style().finish().restDays() * 24 * 60));
        Duration shortBy = Duration.between(span.readyBy(), off.plus(rest));
        return shortBy.isNegative()
                ? new Obstacle.NothingFits(last.id(), off)
                : new Obstacle.TooSoon(span.readyBy(), shortBy);
    }
}
