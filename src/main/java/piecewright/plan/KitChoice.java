package piecewright.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
    private static final int MOST_WAYS = 12;

    private final SetupMaker setups;
    private final PlanRequest request;
    private final Horizon horizon;
    private final Set<Used> tried = new HashSet<>();
    private final List<Obstacle> harms = new ArrayList<>();
    private Pace pace;
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
    private record Used(Outfit outfit, Optional<InsulatedBox> box) {}

    /** The best draft; empty with the reasons added to the obstacles. */
    Optional<Draft> best(List<Obstacle> obstacles) {
        Places told = request.arrangement().places();
        if (!tried(told, obstacles)) return Optional.empty();
        if (best.isEmpty()) everyWay(told, parts());
        if (best.isEmpty() && !harms.isEmpty()) obstacles.addAll(harms);
        else if (best.isEmpty()) usual.ifPresent(searching -> obstacles.addAll(searching.refusal()));
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
        for (Places way : ways) {
            if (best.isPresent() || tried.size() >= MOST_WAYS) return;
            tried(way, new ArrayList<>());
        }
    }

    /** Plans with that kit and keeps what is cheaper; false when it does not hold the piece. */
    private boolean tried(Places places, List<Obstacle> obstacles) {
        PlanRequest way = request.arranged(request.arrangement().at(places));
        Optional<Setup> setup = setups.of(way, horizon.rooms(), horizon.grainKg(), obstacles);
        if (setup.isEmpty()) return false;
        Used used = new Used(setup.get().outfit(), setup.get().couching().map(Couching::box));
        if (!tried.add(used)) return true;
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
