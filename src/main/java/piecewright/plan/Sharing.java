package piecewright.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import piecewright.house.Heater;
import piecewright.house.House;
import piecewright.house.InsulatedBox;
import piecewright.house.Kit;
import piecewright.house.Trays;
import piecewright.house.Vessel;
import piecewright.plan.Availability.Stretch;
import piecewright.plan.Booking.KitKind;
import piecewright.plan.Booking.Taken;
import piecewright.plan.Closures.Use;

/**
 * Kit for a piece beside others: of each kind what they leave alone, where that suffices; else theirs too, while they do
 * not use it.
 */
final class Sharing {
    /** Judgement: less tray than this, m², is not worth carrying grain to. */
    private static final double LEAST_TRAY_M2 = 0.05;

    private final House house;
    private final List<Taken> taken;
    private final Set<KitKind> shared;

    private Sharing(House house, List<Taken> taken, Set<KitKind> shared) {
        this.house = house;
        this.taken = taken;
        this.shared = shared;
    }

    /** At first nothing of theirs is used, but a piece that lies in a box or a heater lies there. */
    static Sharing sparing(PlanRequest request, KitUsed used) {
        List<Taken> taken = request.besides().stream()
                .flatMap(booking -> booking.kit().stream())
                .toList();
        Set<KitKind> lies = EnumSet.noneOf(KitKind.class);
        if (used.did(ActKind.PACK)) lies.add(KitKind.BOX);
        if (used.did(ActKind.LOAD) || used.did(ActKind.STEW)) lies.add(KitKind.HEATER);
        return new Sharing(request.house(), taken, lies);
    }

    /** Theirs too of the kinds these obstacles are about; empty when that changes nothing. */
    Optional<Sharing> widened(List<Obstacle> obstacles) {
        Set<KitKind> wider = EnumSet.copyOf(shared.isEmpty() ? EnumSet.noneOf(KitKind.class) : shared);
        for (Obstacle obstacle : obstacles)
            about(obstacle).filter(this::isTaken).ifPresent(wider::add);
        return wider.equals(shared) ? Optional.empty() : Optional.of(new Sharing(house, taken, wider));
    }

    private boolean isTaken(KitKind kind) {
        return taken.stream().anyMatch(one -> one.kind() == kind);
    }

    private static Optional<KitKind> about(Obstacle obstacle) {
        if (obstacle instanceof Obstacle.VesselTooSmall) return Optional.of(KitKind.VESSELS);
        if (obstacle instanceof Obstacle.BedTooDeep) return Optional.of(KitKind.TRAYS);
        boolean box = obstacle instanceof Obstacle.NoBox
                || obstacle instanceof Obstacle.BoxTooSmall
                || obstacle instanceof Obstacle.CouchTooSmall;
        if (box) return Optional.of(KitKind.BOX);
        boolean heater = obstacle instanceof Obstacle.NoHeater
                || obstacle instanceof Obstacle.HeaterTooSmall
                || obstacle instanceof Obstacle.NeverDry
                || obstacle instanceof Obstacle.NoOven
                || obstacle instanceof Obstacle.OvenUnsure
                || obstacle instanceof Obstacle.StewTooDeep
                || obstacle instanceof Obstacle.TooManyLoads;
        return heater ? Optional.of(KitKind.HEATER) : Optional.empty();
    }

    /** The house with the kit that may be chosen from. */
    House house() {
        Kit kit = house.kit();
        return house.withKit(new Kit(
                shared.contains(KitKind.VESSELS) ? kit.vessels() : spareVessels(kit.vessels()),
                shared.contains(KitKind.TRAYS) ? kit.trays() : spareTrays(kit.trays()),
                shared.contains(KitKind.BOX) ? kit.boxes() : spare(kit.boxes(), KitKind.BOX, InsulatedBox::name),
                shared.contains(KitKind.HEATER) ? kit.heaters() : spare(kit.heaters(), KitKind.HEATER, Heater::name),
                kit.scale(),
                kit.learned()));
    }

    private Stream<Taken> taken(KitKind kind, String name) {
        return taken.stream().filter(one -> one.kind() == kind && one.name().equals(name));
    }

    private List<Vessel> spareVessels(List<Vessel> vessels) {
        List<Vessel> spare = new ArrayList<>(vessels);
        for (String place : vessels.stream().map(Vessel::place).distinct().toList()) {
            vessels.stream()
                    .filter(vessel -> vessel.place().equals(place))
                    .sorted(Comparator.comparingDouble(Vessel::volumeL).reversed())
                    .limit(taken(KitKind.VESSELS, place).mapToInt(Taken::pieces).sum())
                    .forEach(spare::remove);
        }
        return spare;
    }

    private List<Trays> spareTrays(List<Trays> trays) {
        List<Trays> spare = new ArrayList<>();
        for (String place : trays.stream().map(Trays::place).distinct().toList()) {
            double goneM2 =
                    taken(KitKind.TRAYS, place).mapToDouble(Taken::areaM2).sum();
            for (Trays set : trays) {
                if (!set.place().equals(place)) continue;
                double usedM2 = Math.min(goneM2, set.totalAreaM2());
                goneM2 -= usedM2;
                double leftM2 = set.totalAreaM2() - usedM2;
                if (usedM2 == 0) spare.add(set);
                else if (leftM2 >= LEAST_TRAY_M2) spare.add(new Trays(set.name(), place, 1, leftM2));
            }
        }
        return spare;
    }

    private <T> List<T> spare(List<T> kit, KitKind kind, Function<T, String> name) {
        return kit.stream()
                .filter(one -> taken(kind, name.apply(one)).findAny().isEmpty())
                .toList();
    }

    /** When the kit of this setup is in the use of others. */
    Closures closures(Setup setup) {
        Outfit outfit = setup.outfit();
        Map<Use, List<Stretch>> closed = new EnumMap<>(Use.class);
        close(closed, Use.SOAKING, KitKind.VESSELS, outfit.soaking().place()::equals);
        setup.heaping().ifPresent(heaping -> close(closed, Use.HEAPING, KitKind.BOX, heaping.where()::equals));
        close(closed, Use.GROWING, KitKind.TRAYS, outfit.growing().place()::equals);
        close(closed, Use.WITHERING, KitKind.TRAYS, outfit.withering().place()::equals);
        close(
                closed,
                Use.COUCH,
                KitKind.BOX,
                name -> setup.couching()
                        .filter(couching -> couching.box().name().equals(name))
                        .isPresent());
        close(closed, Use.DRYING, KitKind.HEATER, outfit.drying().dryer().name()::equals);
        close(closed, Use.CURING, KitKind.HEATER, outfit.drying().curer().name()::equals);
        close(
                closed,
                Use.STEWING,
                KitKind.HEATER,
                name -> outfit.ovens()
                        .stewing()
                        .filter(stewing -> stewing.oven().name().equals(name))
                        .isPresent());
        close(
                closed,
                Use.ROASTING,
                KitKind.HEATER,
                name -> outfit.ovens()
                        .roasting()
                        .filter(roasting -> roasting.oven().name().equals(name))
                        .isPresent());
        return new Closures(closed);
    }

    private void close(Map<Use, List<Stretch>> closed, Use use, KitKind kind, Predicate<String> mine) {
        if (!shared.contains(kind)) return;
        List<Stretch> stretches = taken.stream()
                .filter(one -> one.kind() == kind && mine.test(one.name()))
                .map(Taken::stretch)
                .toList();
        if (!stretches.isEmpty()) closed.put(use, stretches);
    }
}
