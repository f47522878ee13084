package piecewright.plan.search;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.plan.ActKind;
import piecewright.plan.PlanRequest;
import piecewright.plan.Posed;
import piecewright.plan.Seeded;

/**
 * One planning problem as every solver meets it: candidate instants, what can follow what, and the price of each step,
 * all asked of the search's own route, so that all pay by the same rules.
 */
public final class Problem {
    /** A grid coarse enough to write the whole problem out as a table. */
    private static final Posed.Steps TABLED = new Posed.Steps(240, 60);
    /** A table of so many arcs is given up. */
    private static final int MOST_ARCS = 1_000_000;

    private static final int CHOCO_SECONDS = 120;
    /** What follows so many places is remembered. */
    private static final int REMEMBERED = 4_000;
    /** A search that hurries nowhere and drops no rival: buckets are all that it prunes. */
    private static final Effort CAREFUL = new Effort(Integer.MAX_VALUE, Integer.MAX_VALUE, 1, 1);

    private final Posed posed;
    private final Stops stops;
    private final Route route;
    private final List<Place> starts;
    private final Map<Place, List<Place>> following = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Place, List<Place>> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** An act begun, and how the piece came there. */
    public static final class Place {
        private final Label label;

        private Place(Label label) {
            this.label = label;
        }

        public int stop() {
            return label.stop();
        }

        /** All costs up to here. */
        public double costMinutes() {
            return label.costMinutes();
        }
    }

    public Problem(Posed posed) {
        this.posed = posed;
        this.stops = Stops.of(posed.setup());
        this.route = search(CAREFUL).route();
        this.starts = route.starts().stream().map(Place::new).toList();
    }

    /** A wish as the planner poses it; empty when its kit cannot hold the grain. */
    public static Optional<Problem> usual(PlanRequest request) {
        return Posed.of(request, Posed.Steps.usual()).map(Problem::new);
    }

    /** The same household on one day of start, with two immersions at most, no wither, two levels of heat. */
    public static Optional<Problem> tabled(long seed) {
        PlanRequest like = Seeded.request(seed);
        PlanRequest request = new PlanRequest(
                SearchProofTest.small(like, 2, ActKind.DEROOT).style(),
                like.lot(),
                like.house(),
                like.amount(),
                new PlanRequest.When.StartOn(LocalDate.of(2030, 5, 1 + (int) (seed % 7))));
        return Posed.of(request, TABLED).map(Problem::new);
    }

    private Search search(Effort effort) {
        ActKind last = posed.setup().style().oven().roast().isPresent() ? ActKind.ROAST : ActKind.DEROOT;
        return new Search(posed.setup(), posed.grid(), posed.wish(), last, effort);
    }

    /** Our search as the planner runs it, its tables and bound built anew. */
    public OptionalDouble searched() {
        return best(Effort.of(posed.setup()));
    }

    /** Our search proving its answer, buckets apart. */
    public OptionalDouble searchedCarefully() {
        return best(CAREFUL);
    }

    private OptionalDouble best(Effort effort) {
        return search(effort).best(1).stream()
                .mapToDouble(Search.Found::costMinutes)
                .findFirst();
    }

    /** Cost of the cheapest way choco-solver finds in the table, by then proven; empty when there is none. */
    public OptionalDouble choco() {
        Optional<TabledByChoco.Answer> answer = TabledByChoco.cheapest(table(), CHOCO_SECONDS);
        if (answer.isEmpty()) return OptionalDouble.empty();
        if (!answer.get().proven()) throw new IllegalStateException("not proven in " + CHOCO_SECONDS + " s");
        return OptionalDouble.of(paid(answer.get().labels()));
    }

    /** Only writes the table out. */
    public OptionalDouble onlyTabled() {
        table();
        return OptionalDouble.empty();
    }

    private Tabled table() {
        return Tabled.of(search(CAREFUL).route(), MOST_ARCS).orElseThrow();
    }

    /** What acts in that order at those instants cost when they are walked, infinite when they cannot be. */
    private double paid(List<Label> labels) {
        Optional<Place> place = Optional.empty();
        for (Label label : labels) {
            List<Place> next = place.map(this::after).orElse(starts);
            place = next.stream()
                    .filter(one -> one.stop() == label.stop() && one.label.at() == label.at())
                    .min(Comparator.comparingDouble(Place::costMinutes));
            if (place.isEmpty()) return Double.POSITIVE_INFINITY;
        }
        return place.map(Place::costMinutes).orElse(Double.POSITIVE_INFINITY);
    }

    /** Where a piece can begin. */
    public List<Place> starts() {
        return starts;
    }

    /** Everything that can follow. */
    public List<Place> after(Place place) {
        return following.computeIfAbsent(place, from -> {
            List<Place> next = new ArrayList<>();
            route.expand(from.label, label -> next.add(new Place(label)));
            return next;
        });
    }

    /** Minutes since the problem's origin at which the act begins. */
    public int minute(Place place) {
        return posed.grid().minute(place.label.at());
    }

    /** Water in the grain, wet basis. */
    public double moistureFraction(Place place) {
        return place.label.grain().moistureFraction();
    }

    public ActKind kind(int stop) {
        return stops.kind(stop);
    }

    /** Which immersion or level of heat a stop belongs to. */
    public int number(int stop) {
        return stops.number(stop);
    }

    /** Number of the last stop, which ends the plan. */
    public int goal() {
        return stops.last();
    }

    public boolean isGoal(Place place) {
        return route.isGoal(place.label);
    }

    public Posed posed() {
        return posed;
    }
}
