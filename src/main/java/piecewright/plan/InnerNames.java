package piecewright.plan;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/**
 * Names of turnings and stirrings in a plan made anew: one that stands where one stood keeps its name, one close by
 * takes the name of the one it replaces, others are numbered on. So a calendar moves as few entries as it must.
 */
final class InnerNames {
    /** Judgement: a turning this much earlier or later is the same turning, moved. */
    private static final Duration CLOSE = Duration.ofHours(8);

    /** Judgement: stirrings keep their names when the whole kilning moves. */
    private static final Duration SAME_KILNING = Duration.ofDays(14);

    private final List<Visit> standing;

    InnerNames(List<Visit> standing) {
        this.standing = standing.stream()
                .filter(visit -> !UnderWay.bounds(visit.kind()))
                .toList();
    }

    /** The timetable renamed from its first so many visits on. */
    Timetable in(Timetable timetable, int from) {
        List<Visit> visits = new ArrayList<>(timetable.visits());
        List<Visit> left = new ArrayList<>(standing);
        boolean[] named = new boolean[visits.size()];
        for (Duration within : List.of(Duration.ZERO, CLOSE, SAME_KILNING)) {
            for (int i = from; i < visits.size(); i++) {
                Visit visit = visits.get(i);
                boolean far = within.equals(SAME_KILNING) && visit.kind() != ActKind.STIR;
                if (named[i] || far || UnderWay.bounds(visit.kind())) continue;
                Optional<Visit> same = nearest(left, visit, within);
                if (same.isEmpty()) continue;
                left.remove(same.get());
                visits.set(
                        i, new Visit(same.get().id(), visit.kind(), same.get().number(), visit.at()));
                named[i] = true;
            }
        }
        numberOn(visits, named, from);
        return new Timetable(visits);
    }

    private static Optional<Visit> nearest(List<Visit> left, Visit visit, Duration within) {
        return left.stream()
                .filter(one -> one.kind() == visit.kind()
                        && apart(one.at(), visit.at()).compareTo(within) <= 0)
                .min(Comparator.comparing(one -> apart(one.at(), visit.at())));
    }

    private static Duration apart(Instant one, Instant other) {
        return Duration.between(one, other).abs();
    }

    private void numberOn(List<Visit> visits, boolean[] named, int from) {
        for (int i = from; i < visits.size(); i++) {
            Visit visit = visits.get(i);
            if (named[i] || UnderWay.bounds(visit.kind())) continue;
            int number = 1 + Math.max(highest(visit.kind(), standing), highest(visit.kind(), visits.subList(0, i)));
            String prefix = visit.id().substring(0, visit.id().lastIndexOf('-') + 1);
            visits.set(i, new Visit(prefix + number, visit.kind(), number, visit.at()));
        }
    }

    private static int highest(ActKind kind, List<Visit> visits) {
        return visits.stream()
                .filter(visit -> visit.kind() == kind)
                .mapToInt(Visit::number)
                .max()
                .orElse(0);
    }
}
