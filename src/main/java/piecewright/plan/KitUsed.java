package piecewright.plan;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Where a piece under way is and where its plan has it go: the place or kit of each kind of act, by name. What was done
 * is a fact that no figure learned later and no better choice takes back; what is to come stays as planned while that
 * holds the piece.
 *
 * @param begun whether anything was done at all: then every kind of kit must be found, as best it can be
 */
record KitUsed(Map<ActKind, String> places, Set<ActKind> done, boolean begun) {
    KitUsed {
        places = Map.copyOf(places);
        done = Set.copyOf(done);
    }

    /** Of a piece that only a wish tells of. */
    static KitUsed none() {
        return new KitUsed(Map.of(), Set.of(), false);
    }

    /** Of a plan that is to be followed in its own kit. */
    static KitUsed of(List<Act> acts) {
        Map<ActKind, String> places = new EnumMap<>(ActKind.class);
        for (Act act : acts) act.setting().place().ifPresent(place -> places.putIfAbsent(act.kind(), place));
        return new KitUsed(places, Set.of(), true);
    }

    static KitUsed of(Begun begun) {
        return new KitUsed(
                begun.places(),
                begun.visits().stream().map(Timetable.Visit::kind).collect(Collectors.toSet()),
                !begun.visits().isEmpty());
    }

    /** Whether an act of this kind was done. */
    boolean did(ActKind kind) {
        return done.contains(kind);
    }

    /** The kit an act of this kind was planned with, if the house still has it. */
    <T> List<T> of(ActKind kind, List<T> kit, Function<T, String> name) {
        Optional<String> place = Optional.ofNullable(places.get(kind));
        return kit.stream()
                .filter(one -> place.filter(name.apply(one)::equals).isPresent())
                .toList();
    }

    /** The same, or all where the house has none of it any more or nothing was planned. */
    <T> List<T> ofOrAll(ActKind kind, List<T> kit, Function<T, String> name) {
        List<T> there = of(kind, kit, name);
        return there.isEmpty() ? kit : there;
    }
}
