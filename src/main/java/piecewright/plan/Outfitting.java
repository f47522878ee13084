package piecewright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import piecewright.grain.GrainKind;
import piecewright.house.House;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Outfit.Growing;
import piecewright.plan.Outfit.Soaking;
import piecewright.style.MaltStyle;

/** Chooses vessels, trays and heaters that hold one piece, or says what is too small. */
final class Outfitting {
    /** Judgement: swollen grain takes 1.45 times its dry bulk; design figure between 1.18 and 1.45 reported. */
    private static final double SWELL_RATIO = 1.45;
    /** Judgement: 15 % freeboard over the water. */
    private static final double FILLED_RATIO = 0.85;
    /** Judgement: litres of water per kg of grain for the first immersion, 1.2 to 2 in practice. */
    private static final double FIRST_WATER_L_PER_KG = 1.5;
    /** Judgement: litres of water per kg of grain for later immersions, 1 to 1.5 in practice. */
    private static final double LATER_WATER_L_PER_KG = 1.25;
    /** Judgement: beds are spread this deep where the trays allow: thin enough to leave alone for half a day. */
    private static final double USUAL_BED_CM = 5;
    /** Judgement: growth is easiest to keep near this air temperature. */
    private static final double BEST_FLOOR_C = 15;

    private final House house;
    private final MaltStyle style;
    private final Rooms rooms;
    private final ModelParameters parameters;
    private final Arrangement arrangement;
    private final KitUsed used;

    Outfitting(PlanRequest request, Rooms rooms, ModelParameters parameters, KitUsed used) {
        this.used = used;
        this.arrangement = request.arrangement();
        this.parameters = parameters;
        this.house = request.house();
        this.style = request.style();
        this.rooms = rooms;
    }

    /** The kit chosen, or every reason against. */
    Optional<Outfit> choose(GrainKind grain, double grainKg, double dryMatterKg, List<Obstacle> obstacles) {
        Optional<Soaking> soaking = soaking(grain, grainKg, obstacles);
        Optional<Growing> growing = growing(dryMatterKg, obstacles);
        Optional<Outfit.Drying> drying =
                new Heating(house, style, rooms, parameters, used).choose(arrangement.places(), dryMatterKg, obstacles);
        Optional<Outfit.Ovens> ovens =
                new OvenChoice(house, style, parameters, used).choose(arrangement.places(), dryMatterKg, obstacles);
        if (soaking.isEmpty() || growing.isEmpty() || drying.isEmpty() || ovens.isEmpty()) return Optional.empty();
        return Optional.of(new Outfit(soaking.get(), growing.get(), growing.get(), drying.get(), ovens.get()));
    }

    /** Where the piece was planned to soak while that holds it, and where it soaked, whether or not. */
    private Optional<Soaking> soaking(GrainKind grain, double grainKg, List<Obstacle> obstacles) {
        List<Vessel> all = house.kit().vessels();
        List<Vessel> planned = used.of(ActKind.SOAK, all, Vessel::place);
        Optional<Soaking> there =
                planned.isEmpty() ? Optional.empty() : soaking(planned, grain, grainKg, new ArrayList<>());
        if (there.isPresent()) return there;
        List<Obstacle> why = new ArrayList<>();
        Optional<Soaking> chosen = used.did(ActKind.SOAK) && !planned.isEmpty()
                ? Optional.empty()
                : soaking(asked(all), grain, grainKg, why);
        if (chosen.isEmpty() && used.did(ActKind.SOAK) && !all.isEmpty()) {
            List<Vessel> lies = used.ofOrAll(ActKind.SOAK, all, Vessel::place);
            String place = lies.get(0).place();
            int vessels =
                    (int) lies.stream().filter(one -> one.place().equals(place)).count();
            return Optional.of(
                    new Soaking(place, vessels, FIRST_WATER_L_PER_KG * grainKg, LATER_WATER_L_PER_KG * grainKg));
        }
        obstacles.addAll(why);
        return chosen;
    }

    private static Optional<Soaking> soaking(
            List<Vessel> kit, GrainKind grain, double grainKg, List<Obstacle> obstacles) {
        double neededL = grainKg / GrainBulk.dryKgPerL(grain) * SWELL_RATIO / FILLED_RATIO;
        Soaking best = null;
        double largestL = 0;
        for (var atPlace : byPlace(kit, Vessel::place).entrySet()) {
            List<Vessel> largestFirst = atPlace.getValue().stream()
                    .sorted(Comparator.comparingDouble(Vessel::volumeL).reversed())
                    .toList();
            double volumeL = 0;
            int used = 0;
            while (used < largestFirst.size() && volumeL < neededL)
                volumeL += largestFirst.get(used++).volumeL();
            largestL = Math.max(largestL, volumeL);
            if (volumeL >= neededL && (best == null || used < best.vessels())) {
                best = new Soaking(
                        atPlace.getKey(), used, FIRST_WATER_L_PER_KG * grainKg, LATER_WATER_L_PER_KG * grainKg);
            }
        }
        if (best == null) obstacles.add(new Obstacle.VesselTooSmall(neededL, largestL));
        return Optional.ofNullable(best);
    }

    /** The vessels of the place asked for. */
    private List<Vessel> asked(List<Vessel> vessels) {
        return Arrangement.Places.asked(
                vessels, Vessel::place, arrangement.places().steepsIn());
    }

    /** The trays of the place asked for. */
    private List<Trays> placed(List<Trays> trays) {
        return Arrangement.Places.asked(
                trays, Trays::place, arrangement.places().growsIn());
    }

    /** Where the piece was planned to grow while that holds it, and where it grows, however deep. */
    private Optional<Growing> growing(double dryMatterKg, List<Obstacle> obstacles) {
        List<Trays> all = house.kit().trays();
        List<Trays> planned = used.of(ActKind.FLOOR, all, Trays::place);
        if (used.did(ActKind.FLOOR) && !all.isEmpty()) {
            List<Trays> lies = planned.isEmpty() ? placed(all) : planned;
            return growing(lies, dryMatterKg, Double.POSITIVE_INFINITY, obstacles);
        }
        double deepestCm = style.growth().deepestBedCm();
        Optional<Growing> there =
                planned.isEmpty() ? Optional.empty() : growing(planned, dryMatterKg, deepestCm, new ArrayList<>());
        return there.isPresent() ? there : growing(placed(all), dryMatterKg, deepestCm, obstacles);
    }

    private Optional<Growing> growing(List<Trays> kit, double dryMatterKg, double deepestCm, List<Obstacle> obstacles) {
        double greenKg = dryMatterKg / (1 - style.steep().targetFraction());
        List<Growing> fitting = new ArrayList<>();
        double largestM2 = 0;
        double bedCm = arrangement.bedCm().orElse(USUAL_BED_CM);
        for (var atPlace : byPlace(kit, Trays::place).entrySet()) {
            double areaM2 =
                    atPlace.getValue().stream().mapToDouble(Trays::totalAreaM2).sum();
            largestM2 = Math.max(largestM2, areaM2);
            double usualM2 = greenKg / (parameters.growth().bulkKgPerM3() * bedCm / 100);
            boolean room = usualM2 <= areaM2;
            double depthCm = room ? bedCm : 100 * greenKg / (parameters.growth().bulkKgPerM3() * areaM2);
            if (depthCm <= deepestCm) fitting.add(new Growing(atPlace.getKey(), Math.min(usualM2, areaM2), depthCm));
        }
        if (fitting.isEmpty()) {
            double depthCm = largestM2 > 0
                    ? 100 * greenKg / (parameters.growth().bulkKgPerM3() * largestM2)
                    : Double.POSITIVE_INFINITY;
            obstacles.add(new Obstacle.BedTooDeep(depthCm, deepestCm, largestM2));
        }
        return fitting.stream()
                .min(Comparator.comparingDouble(growing -> Math.abs(rooms.meanC(growing.place()) - BEST_FLOOR_C)));
    }

    private static <T> Map<String, List<T>> byPlace(List<T> kit, java.util.function.Function<T, String> place) {
        return kit.stream().collect(Collectors.groupingBy(place, LinkedHashMap::new, Collectors.toList()));
    }
}
