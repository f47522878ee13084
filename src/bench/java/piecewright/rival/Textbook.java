package piecewright.rival;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.plan.ActKind;
import piecewright.plan.search.Problem;
import piecewright.plan.search.Problem.Place;
import piecewright.style.MaltStyle;

/**
 * The floor: the timetable of a textbook, each act as soon as its condition holds inside somebody's hours, nothing
 * looked ahead. Soaks and rests of eight hours, soaked again until the grain is wet enough, no wither, every level of
 * heat as its gate opens.
 */
final class Textbook {
    /** Textbook lengths. */
    private static final double SOAK_HOURS = 8;
    /** The same. */
    private static final double REST_HOURS = 8;
    /** Days from first steep to de-rooting that a textbook names. */
    private static final int USUAL_DAYS = 9;
    /** Half a point below the target is wet enough. */
    private static final double NEAR_FRACTION = 0.005;

    private final Problem problem;
    private final MaltStyle style;

    Textbook(Problem problem) {
        this.problem = problem;
        this.style = problem.posed().setup().style();
    }

    /** Cost of its timetable, begun where the book says; empty where it leads into a dead end. */
    OptionalDouble once() {
        return cost(from(start()));
    }

    /** Cost of the cheapest of its timetables over all starts. */
    OptionalDouble fromEveryStart() {
        return cost(best());
    }

    /** The cheapest of its timetables over all starts, or one that leads into a dead end. */
    List<Place> best() {
        return problem.starts().stream()
                .map(this::from)
                .min(Comparator.comparingDouble(places -> cost(places).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    private OptionalDouble cost(List<Place> places) {
        Place last = places.get(places.size() - 1);
        return problem.isGoal(last) ? OptionalDouble.of(last.costMinutes()) : OptionalDouble.empty();
    }

    /** The first start, or, when a day to be ready is given, the first that leaves the usual days and the rest. */
    Place start() {
        Instant readyBy = problem.posed().wish().readyBy();
        if (readyBy.equals(Instant.MAX)) return problem.starts().get(0);
        double days = USUAL_DAYS + style.finish().preferredRestDays();
        Instant wanted = readyBy.minus(Duration.ofMinutes(Math.round(days * 24 * 60)));
        int minute =
                (int) Duration.between(problem.posed().grid().origin(), wanted).toMinutes();
        return problem.starts().stream()
                .min(Comparator.comparingInt(place -> Math.abs(problem.minute(place) - minute)))
                .orElseThrow();
    }

    /** The timetable from a start, as far as it leads. */
    List<Place> from(Place start) {
        List<Place> places = new ArrayList<>(List.of(start));
        Optional<Place> next = Optional.of(start);
        while (next.isPresent() && !problem.isGoal(next.get())) {
            next = next(next.get());
            next.ifPresent(places::add);
        }
        return places;
    }

    private Optional<Place> next(Place place) {
        List<Place> all = problem.after(place);
        int wanted = wanted(place, all);
        List<Place> allowed = all.stream().filter(one -> one.stop() == wanted).toList();
        int soonest = problem.minute(place) + waitMinutes(place, wanted);
        return switch (problem.kind(wanted)) {
            case LOAD, PACK, BREAK -> allowed.stream().min(Comparator.comparingDouble(one -> overCost(place, one)));
            default ->
                allowed.stream()
                        .min(Comparator.comparingInt((Place one) -> problem.minute(one) < soonest ? 1 : 0)
                                .thenComparingInt(one -> Math.abs(problem.minute(one) - soonest)));
        };
    }

    /** What a step costs beyond time and work is what its end is judged by: growth nearest to what is wanted. */
    private static double overCost(Place from, Place to) {
        return to.costMinutes() - from.costMinutes();
    }

    private int waitMinutes(Place from, int wanted) {
        ActKind kind = problem.kind(from.stop());
        if (kind == ActKind.SOAK) return (int) (60 * SOAK_HOURS);
        if (kind == ActKind.DRAIN && problem.kind(wanted) == ActKind.SOAK) return (int) (60 * REST_HOURS);
        if (kind == ActKind.CURE) return (int) (60 * style.kiln().cureHours().lowHours());
        return 0;
    }

    private int wanted(Place place, List<Place> all) {
        boolean wet = problem.moistureFraction(place) >= style.steep().targetFraction() - NEAR_FRACTION;
        boolean enough = wet && problem.number(place.stop()) >= style.steep().fewestImmersions();
        if (problem.kind(place.stop()) == ActKind.DRAIN && enough) return after(all, ActKind.FLOOR);
        return all.stream()
                .mapToInt(Place::stop)
                .filter(stop -> problem.kind(stop) != ActKind.WITHER && problem.kind(stop) != ActKind.HEAP)
                .min()
                .orElse(0);
    }

    private int after(List<Place> all, ActKind kind) {
        return all.stream()
                .mapToInt(Place::stop)
                .filter(stop -> problem.kind(stop) == kind)
                .findFirst()
                .orElse(0);
    }
}
