package piecewright.plan;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import piecewright.plan.Availability.Stretch;

/**
 * What another batch has taken of a house.
 *
 * @param batch what people call it
 * @param hands when one person is at work on it
 * @param kit what it uses, and when
 */
public record Booking(String batch, List<Stretch> hands, List<Taken> kit) {
    public Booking {
        Objects.requireNonNull(batch);
        hands = List.copyOf(hands);
        kit = List.copyOf(kit);
    }

    /** Kinds of kit that two batches may both want. */
    public enum KitKind {
        VESSELS,
        TRAYS,
        BOX,
        HEATER
    }

    /**
     * Kit in use.
     *
     * @param name of the box or heater; of the place where vessels or trays stand
     * @param pieces vessels, counted from the largest; 1 for the others
     * @param areaM2 area of trays, m²; 0 for the others
     */
    public record Taken(KitKind kind, String name, int pieces, double areaM2, Stretch stretch) {
        public Taken {
            Objects.requireNonNull(kind);
            Objects.requireNonNull(name);
            Objects.requireNonNull(stretch);
            if (pieces < 1) throw new IllegalArgumentException("pieces must be 1 or more: " + pieces);
            if (!(areaM2 >= 0)) throw new IllegalArgumentException("areaM2 must be 0 or more: " + areaM2);
        }

        /** So many of the largest vessels of a place. */
        public static Taken vessels(String place, int pieces, Stretch stretch) {
            return new Taken(KitKind.VESSELS, place, pieces, 0, stretch);
        }

        /** So much of the trays of a place, m². */
        public static Taken trays(String place, double areaM2, Stretch stretch) {
            return new Taken(KitKind.TRAYS, place, 1, areaM2, stretch);
        }

        public static Taken box(String name, Stretch stretch) {
            return new Taken(KitKind.BOX, name, 1, 0, stretch);
        }

        public static Taken heater(String name, Stretch stretch) {
            return new Taken(KitKind.HEATER, name, 1, 0, stretch);
        }
    }

    /** What a piece of this setup takes whose acts stand so. */
    static Booking of(String batch, Setup setup, List<Act> acts) {
        Outfit outfit = setup.outfit();
        List<Taken> kit = new ArrayList<>();
        kit.add(Taken.vessels(
                outfit.soaking().place(),
                outfit.soaking().vessels(),
                between(acts, List.of(ActKind.SOAK), List.of(ActKind.FLOOR))));
        List<ActKind> offTrays = List.of(ActKind.WITHER, ActKind.PACK, ActKind.STEW, ActKind.LOAD);
        kit.add(trays(outfit.growing(), between(acts, List.of(ActKind.FLOOR), offTrays)));
        if (has(acts, ActKind.WITHER) || has(acts, ActKind.BREAK)) {
            kit.add(trays(
                    outfit.withering(),
                    between(acts, List.of(ActKind.WITHER, ActKind.BREAK), List.of(ActKind.STEW, ActKind.LOAD))));
        }
        setup.couching()
                .ifPresent(couching -> kit.add(Taken.box(
                        couching.box().name(), between(acts, List.of(ActKind.PACK), List.of(ActKind.BREAK)))));
        if (has(acts, ActKind.HEAP)) {
            String where = setup.heaping().orElseThrow().where();
            kit.add(Taken.box(where, between(acts, List.of(ActKind.HEAP), List.of(ActKind.FLOOR))));
        }
        heaters(acts, outfit, kit);
        List<Stretch> hands = acts.stream()
                .map(act -> new Stretch(act.startsAt(), act.endsAt()))
                .toList();
        return new Booking(batch, hands, kit);
    }

    private static void heaters(List<Act> acts, Outfit outfit, List<Taken> kit) {
        Outfit.Drying drying = outfit.drying();
        List<ActKind> until = drying.sameHeater() ? List.of(ActKind.OFF) : List.of(ActKind.CURE);
        kit.add(Taken.heater(drying.dryer().name(), between(acts, List.of(ActKind.LOAD), until)));
        if (!drying.sameHeater()) {
            kit.add(Taken.heater(drying.curer().name(), between(acts, List.of(ActKind.CURE), List.of(ActKind.OFF))));
        }
        for (Act act : acts) {
            Stretch block = new Stretch(act.startsAt(), act.endsAt());
            if (act.kind() == ActKind.STEW) {
                kit.add(Taken.heater(
                        outfit.ovens().stewing().orElseThrow().oven().name(), block));
            } else if (act.kind() == ActKind.ROAST) {
                kit.add(Taken.heater(
                        outfit.ovens().roasting().orElseThrow().oven().name(), block));
            }
        }
    }

    private static Taken trays(Outfit.Growing growing, Stretch stretch) {
        return Taken.trays(growing.place(), growing.areaM2(), stretch);
    }

    private static boolean has(List<Act> acts, ActKind kind) {
        return acts.stream().anyMatch(act -> act.kind() == kind);
    }

    /** From the first act of these kinds until the first of those after it is done. */
    private static Stretch between(List<Act> acts, List<ActKind> first, List<ActKind> last) {
        Instant from = of(acts, first, Instant.MIN).orElse(acts.get(0)).startsAt();
        Instant until = of(acts, last, from).orElse(acts.get(acts.size() - 1)).endsAt();
        return new Stretch(from, until);
    }

    private static Optional<Act> of(List<Act> acts, List<ActKind> kinds, Instant after) {
        return acts.stream()
                .filter(act -> kinds.contains(act.kind()) && act.startsAt().isAfter(after))
                .findFirst();
    }

    /** Whether two batches would want the same kit or any hands at once. */
    public boolean meets(Booking other) {
        boolean hands =
                hands().stream().anyMatch(mine -> other.hands().stream().anyMatch(theirs -> overlap(mine, theirs)));
        boolean kit = kit().stream()
                .anyMatch(mine -> other.kit().stream()
                        .anyMatch(theirs -> mine.kind() == theirs.kind()
                                && mine.name().equals(theirs.name())
                                && overlap(mine.stretch(), theirs.stretch())));
        return hands || kit;
    }

    private static boolean overlap(Stretch one, Stretch other) {
        return one.from().isBefore(other.until()) && other.from().isBefore(one.until());
    }
}
