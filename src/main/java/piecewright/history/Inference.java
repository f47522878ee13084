package piecewright.history;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import piecewright.plan.ActKind;
import piecewright.plan.Timetable.Visit;
import piecewright.plan.search.UnderWay;

/** Which acts must have been done though nobody wrote them down, because a later one was. Scratch space. */
final class Inference {
    private static final Duration JUST_BEFORE = Duration.ofMinutes(1);

    private final List<Visit> planned;
    private final Acts acts = new Acts();
    private final VisitNames names;
    private final Set<String> told = new HashSet<>();
    private final Set<String> inferred = new HashSet<>();

    /** @param told acts written down, in time order */
    Inference(Followed plan, List<Visit> told) {
        this.planned = plan.planned();
        this.names = new VisitNames(plan, acts);
        told.forEach(visit -> this.told.add(visit.id()));
        for (Visit visit : told) {
            if (acts.isEmpty() && visit.kind() != ActKind.SOAK && !planned.isEmpty()) firstSoak(visit);
            before(visit);
            steeped(visit);
            acts.add(visit);
        }
    }

    /** Acts done, those inferred among them, in time order. */
    List<Visit> acts() {
        return acts.visits();
    }

    Set<String> inferred() {
        return inferred;
    }

    /** Nothing is done with grain that was never soaked, even where the plan's own soak was lost. */
    private void firstSoak(Visit visit) {
        boolean stands = planned.stream().anyMatch(plan -> plan.kind() == ActKind.SOAK && plan.number() == 1);
        if (!stands) justBefore(ActKind.SOAK, 1, visit);
    }

    /** Acts planned before this one were done as planned; those that may be left out only in time. */
    private void before(Visit visit) {
        for (Visit plan : planned) {
            boolean known = told.contains(plan.id()) || inferred.contains(plan.id());
            if (known || passed(plan) || !Order.before(plan, visit)) continue;
            boolean inTime = plan.at().isBefore(visit.at());
            boolean afterTheLast = !plan.at().isBefore(latest());
            if (inTime && afterTheLast || must(plan, visit)) {
                infer(plan, inTime ? plan.at() : visit.at().minus(JUST_BEFORE));
            }
        }
    }

    /** Whether what was done shows that it was left out; no bed is moved that was not laid. */
    private boolean passed(Visit plan) {
        int tooLate = Order.tooLate(plan);
        if (acts.firstFrom(tooLate).isEmpty()) return false;
        if (!UnderWay.bounds(plan.kind())) return true;
        return acts.visits().stream().anyMatch(visit -> UnderWay.bounds(visit.kind()) && Order.rank(visit) >= tooLate);
    }

    /** Soaks begin and end, whether or not they stand in the plan. */
    private void steeped(Visit visit) {
        if (visit.kind() == ActKind.DRAIN) {
            if (!acts.has(ActKind.SOAK, visit.number())) justBefore(ActKind.SOAK, visit.number(), visit);
        } else if (UnderWay.bounds(visit.kind()) && acts.soaking()) {
            justBefore(ActKind.DRAIN, acts.highest(ActKind.SOAK), visit);
        }
    }

    private void justBefore(ActKind kind, int number, Visit visit) {
        infer(
                new Visit(names.id(kind, number), kind, number, visit.at()),
                visit.at().minus(JUST_BEFORE));
    }

    private void infer(Visit act, Instant at) {
        acts.add(new Visit(act.id(), act.kind(), act.number(), at.isBefore(latest()) ? latest() : at));
        inferred.add(act.id());
    }

    private Instant latest() {
        return acts.last().map(Visit::at).orElse(Instant.MIN);
    }

    /** Whether the second act cannot have been without the first. */
    private boolean must(Visit first, Visit second) {
        return switch (first.kind()) {
            case SOAK -> second.kind() == ActKind.DRAIN ? first.number() == second.number() : first.number() == 1;
            case DRAIN -> acts.has(ActKind.SOAK, first.number()) || first.number() == 1;
            case HEAP -> second.kind() == ActKind.LOOK;
            case PACK -> second.kind() == ActKind.BREAK || second.kind() == ActKind.CHECK;
            case FLOOR -> second.kind() != ActKind.TURN || steepIsOver(second);
            case LOAD -> second.kind() != ActKind.STIR;
            case CURE, OFF -> true;
            default -> false;
        };
    }

    /** Whether no soak is to come: what is turned in the steep is only stirred, what is turned after it was spread. */
    private boolean steepIsOver(Visit by) {
        return !acts.soaking()
                && planned.stream()
                        .noneMatch(plan -> plan.kind() == ActKind.SOAK
                                && plan.number() > acts.highest(ActKind.SOAK)
                                && plan.at().isAfter(by.at()));
    }
}
