package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.GoingOn;
import piecewright.plan.search.Stops;
import piecewright.plan.search.TimeGrid;
import piecewright.plan.search.UnderWay;

/**
 * Where a search goes on from.
 *
 * @param piece what was done and how the piece stands; empty while the grain is dry
 * @param standing acts to come where somebody counts on them, in time order
 * @param found what was found on the way
 * @param notBefore no act any more before this instant
 * @param free nor before this: until then an act that is certain keeps its person busy
 */
record Resumption(Optional<UnderWay> piece, List<Visit> standing, Found found, Instant notBefore, Instant free) {
    /** Judgement: an act can begin five minutes from now. */
    private static final Duration AT_ONCE = Duration.ofMinutes(5);

    Resumption {
        Objects.requireNonNull(piece);
        standing = List.copyOf(standing);
        Objects.requireNonNull(found);
        Objects.requireNonNull(notBefore);
        Objects.requireNonNull(free);
    }

    /** From raw grain, whenever. */
    static Resumption none() {
        return new Resumption(Optional.empty(), List.of(), Found.nothing(), Instant.MIN, Instant.MIN);
    }

    /** Acts that are done or certain. */
    int done() {
        return piece.map(underWay -> underWay.visits().size()).orElse(0);
    }

    GoingOn goingOn() {
        Map<String, Instant> published = new HashMap<>();
        for (Visit visit : standing) published.put(visit.id(), visit.at());
        return new GoingOn(piece, published);
    }

    /** The acts to come as they stand, without turnings and stirrings whose time has passed. */
    List<Visit> unmoved() {
        Instant last = piece.map(underWay ->
                        underWay.visits().get(underWay.visits().size() - 1).at())
                .filter(at -> at.isAfter(notBefore))
                .orElse(notBefore.minusSeconds(1));
        return standing.stream()
                .filter(visit -> UnderWay.bounds(visit.kind())
                        || visit.at().isAfter(last) && !visit.at().isBefore(free))
                .toList();
    }

    /** The timetable with turnings and stirrings called as they stand already, wherever they lie close. */
    Timetable named(Timetable timetable) {
        Timetable owned = owned(timetable);
        return standing.isEmpty() ? owned : new InnerNames(standing).in(owned, done());
    }

    /** What is done once more gets a name of its own. */
    private Timetable owned(Timetable timetable) {
        List<Visit> visits = new ArrayList<>(timetable.visits().subList(0, done()));
        for (Visit visit : timetable.visits().subList(done(), timetable.visits().size())) {
            boolean bounds = UnderWay.bounds(visit.kind());
            String id = bounds ? Stops.own(visit.id(), visits) : visit.id();
            visits.add(new Visit(id, visit.kind(), visit.number(), visit.at()));
        }
        return new Timetable(visits);
    }

    /** The candidates from now on, with the instants this needs besides. */
    TimeGrid on(TimeGrid grid) {
        if (notBefore.equals(Instant.MIN)) return grid;
        List<Instant> past = new ArrayList<>();
        piece.ifPresent(underWay -> {
            past.add(underWay.standing().at());
            past.add(underWay.visits().get(underWay.visits().size() - 1).at());
        });
        List<Instant> besides = new ArrayList<>(standing.stream().map(Visit::at).toList());
        besides.add(soon(notBefore));
        besides.add(soon(free));
        return grid.goingOn(notBefore, free, past, besides);
    }

    /** The next full five minutes. */
    static Instant soon(Instant now) {
        long step = AT_ONCE.toSeconds();
        return Instant.ofEpochSecond(
                Math.floorDiv(now.getEpochSecond() + (now.getNano() > 0 ? step : step - 1), step) * step);
    }
}
