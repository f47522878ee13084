package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import piecewright.plan.Continuation.Bench;
import piecewright.plan.Simulation.Course;
import piecewright.plan.Simulation.Station;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.Search;
import piecewright.plan.search.Stops;
import piecewright.plan.search.UnderWay;

/** The act that must come next when every moment for it has passed: what practice does then, as soon as somebody can. */
final class Overdue {
    /** Judgement: a bed moved so lately need not be moved first. */
    private static final Duration JUST_MOVED = Duration.ofHours(3);
    /** Judgement: longer ahead nobody looks for a moment. */
    private static final Duration LONGEST_WAIT = Duration.ofDays(4);

    private final Bench bench;
    private final Begun going;
    private final Stops stops;

    Overdue(Bench bench, Begun going) {
        this.bench = bench;
        this.going = going;
        this.stops = Stops.of(bench.setup());
    }

    /** The act at its first possible moment; empty when nothing can be forced. */
    Optional<Visit> next() {
        if (going.visits().isEmpty()) return Optional.empty();
        Visit last = going.visits().get(going.visits().size() - 1);
        Instant from = last.at().isAfter(going.now()) ? last.at().plusSeconds(1) : going.now();
        Visit began = UnderWay.began(going.visits());
        boolean lies = Duration.between(last.at(), from).compareTo(JUST_MOVED) > 0;
        return switch (began.kind()) {
            case SOAK -> act("steep-" + began.number() + ".drain", from);
            case DRAIN -> afterDrain(began.number(), from);
            case FLOOR, WITHER -> lies ? inner(ActKind.TURN, "floor.turn-", from) : act(endOfGrowth(), from);
            case LOAD -> lies ? inner(ActKind.STIR, "kiln.stir-", from) : hotter(from);
            case RAISE -> hotter(from);
            case PACK -> lies ? inner(ActKind.CHECK, "couch.check-", from) : act("couch.break", from);
            case BREAK -> act("kiln.load", from);
            case CURE -> act("kiln.off", from);
            case OFF -> act("finish.deroot", from);
            default -> Optional.empty();
        };
    }

    private String endOfGrowth() {
        return bench.setup().couching().isPresent() ? "couch.pack" : idOf(ActKind.LOAD);
    }

    /** What this style calls its loading or its cure. */
    private String idOf(ActKind kind) {
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.kind(stop) == kind)
                .mapToObj(stops::id)
                .findFirst()
                .orElseThrow();
    }

    private Course course(Instant until) {
        List<Reading> readings = new ArrayList<>(going.found().readings());
        if (readings.isEmpty() || !readings.get(readings.size() - 1).at().isAfter(until)) {
            readings.add(Reading.nothing(until));
        }
        return bench.run(going.visits(), going.found().withReadings(readings));
    }

    private Optional<Visit> afterDrain(int number, Instant from) {
        List<Station> stations = course(from).stations();
        double wet = stations.get(stations.size() - 1).after().mass().moisture().wetBasisFraction();
        boolean wetEnough = wet >= bench.setup().style().steep().acceptable().lowFraction();
        boolean last = number >= bench.setup().style().steep().mostImmersions();
        return act(wetEnough || last ? "floor.spread" : "steep-" + (number + 1) + ".soak", from);
    }

    /** The hottest level whose gate is open by then. */
    private Optional<Visit> hotter(Instant from) {
        var reads = course(from).reads();
        double slow = reads.get(reads.size() - 1).slowFraction();
        if (slow <= bench.setup().cureGateFraction()) return act(idOf(ActKind.CURE), from);
        var rungs = stops.rungs();
        for (int rung = rungs.size() - 1; rung > 0; rung--) {
            String id = "kiln.raise-" + rung;
            boolean done = going.visits().stream().anyMatch(visit -> visit.id().equals(id));
            if (!done && slow <= rungs.get(rung).belowMoistureFraction()) return act(id, from);
        }
        return Optional.empty();
    }

    /** A turning or stirring, under the name of the one that stands there, else of the next one, else a new one. */
    private Optional<Visit> inner(ActKind kind, String prefix, Instant from) {
        List<Visit> standing =
                going.toCome().stream().filter(visit -> visit.kind() == kind).toList();
        Optional<Instant> moment = moment(from, Search.TURN_MINUTES);
        if (moment.isPresent() && !standing.isEmpty()) {
            Visit named = standing.stream()
                    .filter(visit -> visit.at().equals(moment.get()))
                    .findFirst()
                    .orElse(standing.get(0));
            return Optional.of(new Visit(named.id(), kind, named.number(), moment.get()));
        }
        int number = going.visits().stream()
                        .filter(visit -> visit.id().startsWith(prefix))
                        .mapToInt(Visit::number)
                        .max()
                        .orElse(0)
                + 1;
        return moment.map(at -> new Visit(prefix + number, kind, number, at));
    }

    private Optional<Visit> act(String id, Instant from) {
        return IntStream.rangeClosed(0, stops.last())
                .filter(stop -> stops.id(stop).equals(id))
                .boxed()
                .findFirst()
                .flatMap(stop -> moment(from, stops.workMinutes(stop))
                        .map(at -> new Visit(id, stops.kind(stop), stops.number(stop), at)));
    }

    /** The first full five minutes from which somebody can work so long. */
    private Optional<Instant> moment(Instant from, int workMinutes) {
        Instant until = from.plus(LONGEST_WAIT);
        Availability availability = Availability.of(bench.request().house(), from, until)
                .beside(bench.request().besides());
        Duration work = Duration.ofMinutes(workMinutes);
        for (Instant at = Resumption.soon(from); at.isBefore(until); at = at.plus(Duration.ofMinutes(5))) {
            Optional<Instant> free = availability.workableUntil(at);
            if (free.isPresent() && !at.plus(work).isAfter(free.get())) return Optional.of(at);
        }
        return Optional.empty();
    }
}
