package piecewright.plan;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import java.util.stream.Stream;
import piecewright.house.Heater;
import piecewright.house.Heater.HotAir;
import piecewright.house.House;
import piecewright.plan.Outfit.Drying;
import piecewright.process.Surroundings;
import piecewright.process.kiln.AirOn;
import piecewright.process.kiln.ColourKinetics;
import piecewright.process.kiln.DryingBed;
import piecewright.process.kiln.HeaterLimit;
import piecewright.style.MaltStyle;

/** Chooses the heater that dries and the one that cures. */
final class Heating {
    /** Judgement: practice, kiln beds of 8 to 10 cm; 15 is the limit. */
    private static final double DEEPEST_BED_M = 0.15;
    /** Judgement: what cannot blow 40 °C is no dryer. */
    private static final double COOLEST_DRYING_C = 40;
    /** Judgement: moving the malt to another heater is worth an hour or two of drying. */
    private static final double MOVING_HOURS = 2;
    /** Judgement: a heater that must be watched all the time is the last choice. */
    private static final double WATCHED_HOURS = 1000;

    /** Judgement: steps in which a hotter cure is looked for, K. */
    private static final double CURE_STEP_K = 0.5;
    /** Judgement: over its hours curing malt trails the air by so much, K. */
    private static final double TRAILS_K = 2;

    private final House house;
    private final MaltStyle style;
    private final Rooms rooms;
    private final ModelParameters parameters;

    private final KitUsed used;

    Heating(House house, MaltStyle style, Rooms rooms, ModelParameters parameters, KitUsed used) {
        this.used = used;
        this.parameters = parameters;
        this.house = house;
        this.style = style;
        this.rooms = rooms;
    }

    /** The heaters chosen, or every reason against; what lies in one stays in it while nothing else is known. */
    Optional<Drying> choose(Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        List<Heater> all = house.kit().heaters();
        List<Heater> dryers = used.of(ActKind.LOAD, all, Heater::name);
        List<Heater> curers = used.of(ActKind.CURE, all, Heater::name);
        boolean lies = used.did(ActKind.LOAD) && !dryers.isEmpty();
        if (lies || used.begun() && !dryers.isEmpty() && !curers.isEmpty()) {
            List<Heater> cures = curers.isEmpty() ? all : curers;
            return dryers.stream()
                    .flatMap(dryer -> cures.stream().map(curer -> pair(dryer, curer)))
                    .min(Comparator.comparingDouble(drying -> hours(drying, dryMatterKg)));
        }
        return chosen(places, dryMatterKg, obstacles);
    }

    private Optional<Drying> chosen(Arrangement.Places places, double dryMatterKg, List<Obstacle> obstacles) {
        double greenM2 = dryMatterKg
                / (1 - style.steep().targetFraction())
                / parameters.growth().bulkKgPerM3()
                / DEEPEST_BED_M;
        double driedM2 =
                dryMatterKg / (1 - gateFraction()) / parameters.growth().bulkKgPerM3() / DEEPEST_BED_M;
        List<Heater> heaters = house.kit().heaters();
        double neededC = style.kiln().cureC().lowC();
        double hottestC = heaters.stream().mapToDouble(this::hottestCureC).max().orElse(0);
        List<Heater> dryers = heaters.stream()
                .filter(heater -> hottestDryC(heater) >= COOLEST_DRYING_C)
                .toList();
        List<Heater> curers = heaters.stream()
                .filter(heater -> hottestCureC(heater) >= neededC)
                .toList();
        if (curers.isEmpty() || dryers.isEmpty()) {
            obstacles.add(new Obstacle.NoHeater(neededC, hottestC));
            return Optional.empty();
        }
        List<Heater> largeDryers = largeEnough(dryers, greenM2, obstacles);
        List<Heater> largeCurers = largeEnough(curers, driedM2, obstacles);
        if (largeDryers.isEmpty() || largeCurers.isEmpty()) return Optional.empty();
        return best(
                Arrangement.Places.asked(largeDryers, Heater::name, places.dryer()),
                Arrangement.Places.asked(largeCurers, Heater::name, places.curer()),
                dryMatterKg,
                obstacles);
    }

    private static List<Heater> largeEnough(List<Heater> heaters, double neededM2, List<Obstacle> obstacles) {
        List<Heater> large = heaters.stream()
                .filter(heater -> heater.trayAreaM2() >= neededM2)
                .toList();
        double largestM2 =
                heaters.stream().mapToDouble(Heater::trayAreaM2).max().orElse(0);
        boolean told = obstacles.stream().anyMatch(one -> one instanceof Obstacle.HeaterTooSmall);
        if (large.isEmpty() && !told) obstacles.add(new Obstacle.HeaterTooSmall(neededM2, largestM2));
        return large;
    }

    private Optional<Drying> best(
            List<Heater> dryers, List<Heater> curers, double dryMatterKg, List<Obstacle> obstacles) {
        Optional<Drying> best = dryers.stream()
                .flatMap(dryer -> curers.stream().map(curer -> pair(dryer, curer)))
                .filter(drying -> hours(drying, dryMatterKg) < Double.POSITIVE_INFINITY)
                .min(Comparator.comparingDouble(drying -> hours(drying, dryMatterKg)));
        if (best.isEmpty()) {
            Heater dryer = dryers.get(0);
            double airOnC = dryingC(hottestDryC(dryer));
            double driest = bed().driestRatio(air(dryer, airOnC));
            obstacles.add(new Obstacle.NeverDry(airOnC, driest / (1 + driest)));
        }
        return best;
    }

    private Drying pair(Heater dryer, Heater curer) {
        return new Drying(dryer, curer, hottestDryC(dryer), Math.min(cureC(), hottestCureC(curer)));
    }

    /**
     * The coolest cure from the middle of the style's on that colours its malt to the middle in its usual hours; none that
     * could overshoot the style where the bed does not trail its air.
     */
    private double cureC() {
        var range = style.kiln().cureC();
        double middleC = (range.lowC() + range.highC()) / 2;
        boolean cureMakesIt = style.couches().hot().isEmpty()
                && style.oven().stew().isEmpty()
                && style.oven().roast().isEmpty();
        if (!cureMakesIt) return middleC;
        ColourKinetics kinetics = new ColourKinetics(parameters.kiln().colour());
        var base = style.kiln().colourBase();
        var hours = style.kiln().cureHours();
        double usualHours = (hours.lowHours() + hours.highHours()) / 2;
        var colour = style.finish().colour();
        DoubleBinaryOperator madeEbc = (grainC, cured) -> kinetics.isothermalEbc(
                base.startEbc(), grainC, style.kiln().endMoistureFraction(), base.substrateRatio(), cured);
        double curesC = middleC;
        while (curesC + CURE_STEP_K <= range.highC()
                && madeEbc.applyAsDouble(curesC - TRAILS_K, usualHours) < colour.middleEbc()
                && madeEbc.applyAsDouble(curesC + CURE_STEP_K, hours.highHours()) < colour.highEbc()) {
            curesC += CURE_STEP_K;
        }
        return curesC;
    }

    /** Hours this pair would need at its last rung, and what speaks against it, in hours. */
    private double hours(Drying drying, double dryMatterKg) {
        double fromRatio = ratio(style.steep().targetFraction());
        double airOnC = dryingC(drying.hottestDryC());
        double hours = bed().hoursToDry(fromRatio, ratio(gateFraction()), dryMatterKg, air(drying.dryer(), airOnC))
                .orElse(Double.POSITIVE_INFINITY);
        boolean watched = Stream.of(drying.dryer(), drying.curer())
                .anyMatch(heater -> !heater.control().holdsSetPoint());
        return hours + (drying.sameHeater() ? 0 : MOVING_HOURS) + (watched ? WATCHED_HOURS : 0);
    }

    /** The warmest rung at or below what the heater reaches, before the cure. */
    private double dryingC(double hottestC) {
        double cureC = style.kiln().cureC().lowC();
        return style.kiln().ladder().stream()
                .mapToDouble(rung -> rung.airOnC())
                .filter(rungC -> rungC <= hottestC && rungC < cureC)
                .max()
                .orElse(Math.min(hottestC, style.kiln().ladder().get(0).airOnC()));
    }

    private double gateFraction() {
        return style.kiln().ladder().get(style.kiln().ladder().size() - 1).belowMoistureFraction();
    }

    private static double ratio(double fraction) {
        return fraction / (1 - fraction);
    }

    private DryingBed bed() {
        return new DryingBed(parameters.kiln().drying());
    }

    private AirOn air(Heater heater, double airOnC) {
        Surroundings room = rooms.at(heater.place());
        return AirOn.of(airOnC, heater.air().airFlowM3PerHour(), rooms.meanC(heater.place()), room.humidityFraction());
    }

    private double hottestDryC(Heater heater) {
        return hottestC(heater, heater.air());
    }

    private double hottestCureC(Heater heater) {
        return hottestC(heater, Drying.vented(heater.air()));
    }

    private double hottestC(Heater heater, HotAir air) {
        Surroundings room = rooms.at(heater.place());
        return HeaterLimit.hottestAirOnC(air, rooms.meanC(heater.place()), room.humidityFraction());
    }
}
