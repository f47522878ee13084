package piecewright.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule;
import piecewright.style.StewSchedule;

/** Chooses the ovens that stew and roast, or says what is missing. */
final class OvenChoice {
    /** Judgement: dry, de-rooted malt as it lies loose, kg/m³. */
    private static final double MALT_KG_PER_M3 = 530;
    /** Judgement: nobody roasts more loads of one piece. */
    private static final int MOST_LOADS = 4;

    private final House house;
    private final MaltStyle style;
    private final double greenKgPerM3;
    private final KitUsed used;

    OvenChoice(House house, MaltStyle style, ModelParameters parameters, KitUsed used) {
        this.used = used;
        this.house = house;
        this.style = style;
        this.greenKgPerM3 = parameters.growth().bulkKgPerM3();
    }

    /** The ovens chosen, none where the style needs none, or every reason against. */
    Optional<Outfit.Ovens> choose(Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        Optional<Outfit.Stewing> stewing =
                style.oven().stew().flatMap(stew -> stewing(stew, places, dryMatterKg, obstacles));
        Optional<Outfit.Roasting> roasting =
                style.oven().roast().flatMap(roast -> roasting(roast, dryMatterKg, obstacles));
        boolean whole = stewing.isPresent() == style.oven().stew().isPresent()
                && roasting.isPresent() == style.oven().roast().isPresent();
        return whole ? Optional.of(new Outfit.Ovens(stewing, roasting)) : Optional.empty();
    }

    /** The smallest oven that holds it, because thin layers dry before they are liquid. */
    private Optional<Outfit.Stewing> stewing(
            StewSchedule stew, Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        Predicate<Heater> stews = heater -> OvenLimit.holds(heater, stew.ovenC());
        if (largest(stews).isEmpty()) {
            obstacles.add(new Obstacle.NoOven(stew.ovenC(), hottestC()));
            return Optional.empty();
        }
        double volumeM3 = dryMatterKg / (1 - style.steep().targetFraction()) / greenKgPerM3;
        double neededM2 = volumeM3 / (stew.deepestCm() / 100);
        List<Heater> holding = house.kit().heaters().stream()
                .filter(stews.and(heater -> heater.trayAreaM2() >= neededM2))
                .toList();
        Optional<Heater> oven = used.of(ActKind.STEW, house.kit().heaters(), Heater::name).stream()
                .findFirst()
                .or(() -> Arrangement.Places.asked(holding, Heater::name, places.stewer()).stream()
                        .min(Comparator.comparingDouble(Heater::trayAreaM2)));
        if (oven.isEmpty()) {
            double areaM2 = largest(stews).orElseThrow().trayAreaM2();
            obstacles.add(new Obstacle.StewTooDeep(100 * volumeM3 / areaM2, stew.deepestCm(), areaM2));
        }
        return oven.map(chosen -> new Outfit.Stewing(chosen, 100 * volumeM3 / chosen.trayAreaM2()));
    }

    private Optional<Outfit.Roasting> roasting(RoastSchedule roast, double dryMatterKg, List<Obstacle> obstacles) {
        Predicate<Heater> reaches =
                heater -> roast.steps().stream().allMatch(step -> OvenLimit.holds(heater, step.ovenC()));
        if (largest(reaches).isEmpty()) {
            obstacles.add(new Obstacle.NoOven(roast.hottestC(), hottestC()));
            return Optional.empty();
        }
        Optional<Heater> oven = used.of(ActKind.ROAST, house.kit().heaters(), Heater::name).stream()
                .findFirst()
                .or(() -> largest(reaches.and(heater -> roast.hottestC() <= OvenLimit.hottestC(heater))));
        if (oven.isEmpty()) {
            double errorK = largest(reaches).orElseThrow().control().thermostatErrorK();
            obstacles.add(new Obstacle.OvenUnsure(roast.hottestC(), errorK, OvenLimit.CEILING_C));
            return Optional.empty();
        }
        double loadKg = oven.get().trayAreaM2() * roast.depthCm() / 100 * MALT_KG_PER_M3;
        int loads = (int) Math.ceil(dryMatterKg / loadKg);
        if (loads > MOST_LOADS) {
            obstacles.add(new Obstacle.TooManyLoads(loads, MOST_LOADS, loadKg));
            return Optional.empty();
        }
        return Optional.of(new Outfit.Roasting(oven.get(), loads));
    }

    private Optional<Heater> largest(Predicate<Heater> fits) {
        return house.kit().heaters().stream().filter(fits).max(Comparator.comparingDouble(Heater::trayAreaM2));
    }

    private double hottestC() {
        return house.kit().heaters().stream()
                .mapToDouble(OvenLimit::reachesC)
                .max()
                .orElse(0);
    }
}
