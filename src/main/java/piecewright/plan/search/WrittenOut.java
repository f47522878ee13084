package piecewright.plan.search;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import piecewright.plan.ActKind;
import piecewright.plan.Bill;
import piecewright.plan.Rule;
import piecewright.plan.Timetable;
import piecewright.plan.Timetable.Visit;

/** Writes the way to a goal out in acts, those inside phases included, and what each of them was charged. */
final class WrittenOut {
    private final Space space;
    private final Route route;
    private final Inner inner;
    private final Optional<TakenUp> takenUp;

    /** Writes out acts inside a phase: their instants between the act that begins and the one that ends it. */
    interface Inner {
        List<Integer> between(Label begins, Label ends);
    }

    WrittenOut(Space space, Route route, Inner inner, Optional<TakenUp> takenUp) {
        this.space = space;
        this.route = route;
        this.inner = inner;
        this.takenUp = takenUp;
    }

    /** The timetable of a way, what was done already before it. */
    Timetable timetable(Label goal) {
        List<Visit> visits = new ArrayList<>(takenUp.map(TakenUp::visits).orElse(List.of()));
        List<Label> path = goal.path();
        int[] numbers = numbers();
        for (int i = 0; i < path.size(); i++) {
            if (i > 0 || takenUp.isEmpty()) addVisits(visits, path.get(i));
            if (i + 1 < path.size()) visits.addAll(innerVisits(path.get(i), path.get(i + 1), numbers));
        }
        return new Timetable(visits);
    }

    /** What the way costs, act by act and rule by rule; what was done already is paid. */
    Bill bill(Label goal) {
        List<Label> path = goal.path();
        int[] numbers = numbers();
        Items items = new Items();
        if (takenUp.isEmpty()) addAct(items, path.get(0));
        for (int i = 1; i < path.size(); i++) {
            Label from = path.get(i - 1);
            Label to = path.get(i);
            double before = items.totalMinutes;
            for (Visit visit : innerVisits(from, to, numbers)) addInner(items, visit);
            String id = space.stops().firstId(to.stop());
            addAct(items, to);
            items.add(
                    id,
                    Rule.TIME,
                    space.rules()
                            .timePasses(
                                    space.grid().minute(to.at()) - space.grid().minute(from.at())));
            charged(from, to).forEach((rule, minutes) -> items.add(id, rule, minutes));
            double rest = to.costMinutes() - from.costMinutes() - (items.totalMinutes - before);
            items.add(id, gaps(from), rest);
        }
        return new Bill(items.all);
    }

    /** Grows as acts are charged. */
    private static final class Items {
        /** Judgement: a smaller charge is a rounding error. */
        private static final double NOTHING_MINUTES = 1e-9;

        final List<Bill.Item> all = new ArrayList<>();
        double totalMinutes;

        void add(String id, Rule rule, double minutes) {
            if (Math.abs(minutes) < NOTHING_MINUTES) return;
            all.add(new Bill.Item(id, rule, minutes));
            totalMinutes += minutes;
        }
    }

    private void addAct(Items items, Label label) {
        String id = space.stops().firstId(label.stop());
        double work = space.stops().workMinutes(label.stop());
        double hour = space.grid().unsociableCostMinutes(label.at());
        items.add(id, Rule.WORK, work);
        items.add(id, Rule.HOUR, hour);
        items.add(id, Rule.MOVED, space.actCostMinutes(label.stop(), label.at()) - work - hour);
    }

    private void addInner(Items items, Visit visit) {
        boolean looks = visit.kind() == ActKind.CHECK || visit.kind() == ActKind.LOOK;
        int at = space.grid().firstAtOrAfter(space.grid().minuteOf(visit.at()));
        items.add(visit.id(), Rule.WORK, looks ? Search.CHECK_MINUTES : Search.TURN_MINUTES);
        items.add(visit.id(), Rule.HOUR, space.grid().unsociableCostMinutes(at));
    }

    /** What the rules charge the step from one label to the next. */
    private Map<Rule, Double> charged(Label from, Label to) {
        List<Map<Rule, Double>> found = new ArrayList<>();
        space.toll().begin();
        route.expand(from, label -> {
            boolean same = label.stop() == to.stop() && label.at() == to.at();
            if (same && label.costMinutes() == to.costMinutes())
                found.add(space.toll().step());
        });
        space.toll().end();
        return found.isEmpty() ? Map.of() : found.get(0);
    }

    /** The rule that charges what a phase begun so was left alone. */
    private Rule gaps(Label from) {
        return switch (space.stops().kind(from.stop())) {
            case HEAP -> Rule.LOOKS;
            case PACK -> Rule.CHECKS;
            case LOAD -> Rule.STIRRINGS;
            default -> Rule.TURNINGS;
        };
    }

    private int[] numbers() {
        return takenUp.map(TakenUp::numbers).orElseGet(() -> new int[] {0, 0, 0, 0});
    }

    /** The act of a label; where a stew goes before loading, that first and loading as it ends. */
    private void addVisits(List<Visit> visits, Label label) {
        Stops stops = space.stops();
        Instant at = space.grid().instant(label.at());
        boolean stews = label.stop() == stops.load() && stops.stewMinutes() > 0;
        if (stews) visits.add(new Visit(Stops.STEW_ID, ActKind.STEW, 0, at));
        visits.add(new Visit(
                stops.id(label.stop()),
                stops.kind(label.stop()),
                stops.number(label.stop()),
                stews ? at.plus(Duration.ofMinutes(stops.stewMinutes())) : at));
    }

    private List<Visit> innerVisits(Label label, Label next, int[] numbers) {
        return switch (space.stops().kind(label.stop())) {
            case FLOOR, WITHER -> numbered("floor.turn-", ActKind.TURN, inner.between(label, next), numbers, 0);
            case LOAD -> numbered("kiln.stir-", ActKind.STIR, inner.between(label, next), numbers, 1);
            case PACK -> numbered("couch.check-", ActKind.CHECK, inner.between(label, next), numbers, 2);
            case HEAP -> numbered("wetcouch.look-", ActKind.LOOK, inner.between(label, next), numbers, 3);
            default -> List.of();
        };
    }

    /** @param which of the numbers goes up with each act */
    private List<Visit> numbered(String id, ActKind kind, List<Integer> ats, int[] numbers, int which) {
        List<Visit> visits = new ArrayList<>();
        for (int at : ats) {
            int number = ++numbers[which];
            visits.add(new Visit(id + number, kind, number, space.grid().instant(at)));
        }
        return visits;
    }
}
