package piecewright.history;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;

/** Acts in the order they are added, quickly asked about. Scratch space of one reading of a log. */
final class Acts {
    private final List<Visit> visits = new ArrayList<>();
    private final Map<String, Visit> byId = new HashMap<>();
    private final Map<ActKind, Set<Integer>> numbers = new EnumMap<>(ActKind.class);
    private final Map<ActKind, Integer> highest = new EnumMap<>(ActKind.class);
    private int highestRank = Integer.MIN_VALUE;

    void add(Visit visit) {
        visits.add(visit);
        byId.put(visit.id(), visit);
        numbers.computeIfAbsent(visit.kind(), kind -> new HashSet<>()).add(visit.number());
        highest.merge(visit.kind(), visit.number(), Math::max);
        highestRank = Math.max(highestRank, Order.rank(visit));
    }

    List<Visit> visits() {
        return visits;
    }

    boolean isEmpty() {
        return visits.isEmpty();
    }

    Optional<Visit> last() {
        return visits.isEmpty() ? Optional.empty() : Optional.of(visits.get(visits.size() - 1));
    }

    Optional<Visit> of(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    boolean has(ActKind kind) {
        return numbers.containsKey(kind);
    }

    boolean has(ActKind kind, int number) {
        Set<Integer> known = numbers.get(kind);
        return known != null && known.contains(number);
    }

    /** The highest number of an act of that kind; 0 for none. */
    int highest(ActKind kind) {
        return highest.getOrDefault(kind, 0);
    }

    /** Whether the grain lies under water. */
    boolean soaking() {
        return highest(ActKind.SOAK) > highest(ActKind.DRAIN);
    }

    boolean isMalt() {
        return has(ActKind.OFF) || has(ActKind.DEROOT) || has(ActKind.ROAST);
    }

    /** The first act of this rank or a higher one. */
    Optional<Visit> firstFrom(int rank) {
        if (highestRank < rank) return Optional.empty();
        return visits.stream().filter(visit -> Order.rank(visit) >= rank).findFirst();
    }
}
