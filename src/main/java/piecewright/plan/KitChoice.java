package piecewright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import piecewright.house.Heater;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Arrangement.Places;
import piecewright.plan.Planner.Span;

/**
 * Chooses among the kit of a house by planning with it: with what looks best, and where nothing fits so, every other way
 * until one does. What is there besides can so never be in the way.
 */
final class KitChoice {
    /** Judgement: nobody has more distinct kits worth planning with where the first ones do not fit. */
    private static final int MOST_KITS = 12;
    /** Judgement: a change of the wish is tried with the best kit and another one. */
    private static final int MOST_HURRIED_KITS = 2;
    /** Judgement: measured; about a second of CPU for all kits after the first. */
    private static final int MOST_OTHER_WAYS = 700_000;
    /** Judgement: measured; to tabulate what a search works with takes as long as so many ways. */
    private static final int WAYS_PER_SEARCH = 25_000;

    private final SetupMaker setups;
    private final PlanRequest request;
    private final Horizon horizon;
    private final Set<Used> tried = new HashSet<>();
    private final List<Obstacle> harms = new ArrayList<>();
    private final AtomicInteger otherWaysLeft = new AtomicInteger(MOST_OTHER_WAYS);
    private Pace pace;
    private boolean untried;
    private Optional<Draft> best = Optional.empty();
    private Optional<Searching> usual = Optional.empty();

    /** When a plan may lie, the air of the house by then, and how much grain it takes, kg. */
    record Horizon(Span span, Rooms rooms, double grainKg) {}

    KitChoice(SetupMaker setups, PlanRequest request, Horizon horizon, Pace pace) {
        this.setups = setups;
        this.request = request;
        this.horizon = horizon;
        this.pace = pace;
    }

    /** The kit that a piece of this setup uses. */
    private record Used(Outfit outfit, Optional<InsulatedBox> box) {
        static Used of(Setup setup) {
            return new Used(setup.outfit(), setup.couching().map(Couching::box));
        }
    }

    /** The best draft; empty with the reasons added to the obstacles. */
    Optional<Draft> best(List<Obstacle> obstacles) {
        Places told = request.arrangement().places();
        if (!tried(told, obstacles)) return Optional.empty();
        if (best.isEmpty()) everyWay(told, parts());
        if (best.isEmpty() && !harms.isEmpty()) obstacles.addAll(harms);
        else if (best.isEmpty()) usual.ifPresent(searching -> obstacles.addAll(searching.refusal()));
        if (best.isEmpty() && untried) obstacles.add(new Obstacle.NotAllTried(tried.size()));
        return best;
    }

    private void everyWay(Places told, List<List<UnaryOperator<Places>>> parts) {
        List<Places> ways = List.of(told);
        for (List<UnaryOperator<Places>> part : parts) {
            List<Places> before = ways;
            ways = Stream.concat(
                            before.stream(),
                            part.stream().flatMap(other -> before.stream().map(other)))
                    .distinct()
                    .toList();
        }
        pace = pace.watchedBy(new Spent());
        int most = pace.isHurried() ? MOST_HURRIED_KITS : MOST_KITS;
        for (Places way : ways) {
            if (best.isPresent()) return;
            boolean enough = tried.size() >= most || otherWaysLeft.get() <= 0;
            if (!enough) tried(way, new ArrayList<>());
            else if (isAnother(way)) {
                untried = true;
                return;
            }
        }
    }

    /** Whether this is kit that holds the piece and was not planned with. */
    private boolean isAnother(Places places) {
        PlanRequest way = request.arranged(request.arrangement().at(places));
        return setups.of(way, horizon.rooms(), horizon.grainKg(), new ArrayList<>())
                .filter(setup -> !tried.contains(Used.of(setup)))
                .isPresent();
    }

    /** Counts what is spent on other kit than the first; a sum, whatever the order in which searches add to it. */
    private final class Spent implements Watch {
        @Override
        public void looking() {
            // how long it takes is no matter here
        }

        @Override
        public void beginning() {
            otherWaysLeft.addAndGet(-WAYS_PER_SEARCH);
        }

        @Override
        public void looked(int ways) {
            otherWaysLeft.addAndGet(-ways);
        }
    }

    /** Plans with that kit and keeps what is cheaper; false when it does not hold the piece. */
    private boolean tried(Places places, List<Obstacle> obstacles) {
        PlanRequest way = request.arranged(request.arrangement().at(places));
        Optional<Setup> setup = setups.of(way, horizon.rooms(), horizon.grainKg(), obstacles);
        if (setup.isEmpty()) return false;
        if (!tried.add(Used.of(setup.get()))) return true;
        Optional<Obstacle> certain = GrainHarm.certain(setup.get(), horizon.rooms());
        if (certain.isPresent()) {
            if (harms.isEmpty()) harms.add(certain.get());
            return true;
        }
        double rawC = Planner.rawC(setup.get(), horizon.rooms());
        Searching searching = new Searching(way, horizon.span(), setup.get(), rawC, pace);
        if (usual.isEmpty()) usual = Optional.of(searching);
        Optional<Draft> found = searching.draft();
        Optional<Obstacle> harm = found.flatMap(draft -> GrainHarm.of(draft.setup(), draft.course()));
        if (found.isEmpty()) harm = GrainHarm.ofAir(setup.get(), horizon.rooms());
        if (harms.isEmpty()) harm.ifPresent(harms::add);
        Optional<Draft> draft = harm.isPresent() ? Optional.empty() : found;
        if (best.isEmpty()) best = draft;
        if (best.isEmpty()) pace = pace.afterNothing();
        return true;
    }

    /** Part by part what else there is than was told. */
    private List<List<UnaryOperator<Places>>> parts() {
        Kit kit = request.house().kit();
        Places told = request.arrangement().places();
        List<List<UnaryOperator<Places>>> parts = new ArrayList<>();
        if (told.steepsIn().isEmpty()) {
            parts.add(each(kit.vessels().stream().map(Vessel::place), place -> like -> like.steepingIn(place)));
        }
        if (told.growsIn().isEmpty()) {
            parts.add(each(kit.trays().stream().map(Trays::place), place -> like -> like.growingIn(place)));
        }
        if (told.dryer().isEmpty() && told.curer().isEmpty() && kit.heaters().size() > 1) parts.add(heats(kit));
        boolean couches = request.style().couches().hot().isPresent();
        if (couches && told.box().isEmpty()) {
            parts.add(each(kit.boxes().stream().map(InsulatedBox::name), name -> like -> like.packedIn(name)));
        }
        boolean stews = request.style().oven().stew().isPresent();
        if (stews && told.stewer().isEmpty()) {
            parts.add(each(kit.heaters().stream().map(Heater::name), name -> like -> like.stewedIn(name)));
        }
        return parts;
    }

    private static List<UnaryOperator<Places>> heats(Kit kit) {
        List<UnaryOperator<Places>> pairs = new ArrayList<>();
        for (Heater dryer : kit.heaters()) {
            for (Heater curer : kit.heaters()) pairs.add(like -> like.heatedBy(dryer.name(), curer.name()));
        }
        return pairs;
    }

    private static List<UnaryOperator<Places>> each(
            Stream<String> names, java.util.function.Function<String, UnaryOperator<Places>> change) {
        List<UnaryOperator<Places>> all = names.distinct().map(change).toList();
        return all.size() > 1 ? all : List.of();
    }

    /** The arrangement with the kit of this setup told. */
    static Arrangement with(Arrangement arrangement, Setup setup) {
        Outfit outfit = setup.outfit();
        Places places = arrangement
                .places()
                .steepingIn(outfit.soaking().place())
                .growingIn(outfit.growing().place())
                .heatedBy(
                        outfit.drying().dryer().name(), outfit.drying().curer().name());
        if (setup.couching().isPresent())
            places = places.packedIn(setup.couching().get().box().name());
        if (outfit.ovens().stewing().isPresent()) {
            places = places.stewedIn(outfit.ovens().stewing().get().oven().name());
        }
        return arrangement.at(places);
    }
}
