package piecewright.plan;

import java.util.List;
import java.util.stream.LongStream;
import piecewright.plan.Styled.Family;

/**
 * The plans of 500 households wishing for every style, searched for once in a test run. Another number of them:
 * {@code mvn -q test -Dtest='PlanInvariantsTest,StyledPlansTest,CouchedPlansTest' -Dpiecewright.households=5000}.
 */
final class StyledPlans {
    private static final int HOUSEHOLDS = Integer.getInteger("piecewright.households", 500);

    private StyledPlans() {}

    /** Apart, so that the threads that plan need not wait until this class is ready. */
    private static final class Campaign {
        static final List<Case> ALL = searched();
    }

    private static List<Case> searched() {
        return LongStream.range(0, HOUSEHOLDS)
                .parallel()
                .mapToObj(StyledPlans::of)
                .toList();
    }

    /**
     * What came of a wish.
     *
     * @param hottest how warm its heaps got on the way
     */
    record Case(long seed, PlanRequest request, PlanResult result, Hottest hottest) {
        Family family() {
            return Styled.family(seed);
        }

        boolean isPlanned() {
            return result instanceof PlanResult.Planned;
        }

        Plan plan() {
            return ((PlanResult.Planned) result).plan();
        }

        String told(Act act) {
            return "seed " + seed + ", " + request.style().key() + ", " + act.id();
        }

        @Override
        public String toString() {
            return "seed " + seed + ", " + request.style().key();
        }
    }

    /** Mean temperatures, °C; those of heaps that were never made are low. */
    record Hottest(double wetCouchC, double hotCouchC) {}

    static List<Case> all() {
        return Campaign.ALL;
    }

    static List<Case> planned() {
        return all().stream().filter(Case::isPlanned).toList();
    }

    static List<Case> planned(Family family) {
        return planned().stream().filter(one -> one.family() == family).toList();
    }

    /** The wish of that seed planned anew; states along the way are let go when they have been looked at. */
    static Case of(long seed) {
        PlanRequest request = Styled.request(seed);
        return new Planner(ModelParameters.defaults())
                .plan(request)
                .match(
                        planned -> new Case(
                                seed, request, new PlanResult.Planned(brief(planned.plan())), hottest(planned.plan())),
                        not -> new Case(seed, request, not, new Hottest(-50, -50)));
    }

    private static Plan brief(Plan plan) {
        return new Plan(
                plan.subject(),
                plan.outcome(),
                plan.checks(),
                plan.acts(),
                plan.phases(),
                plan.findings(),
                List.of(),
                plan.bill());
    }

    private static Hottest hottest(Plan plan) {
        return new Hottest(hottestC(plan, ActKind.HEAP, ActKind.FLOOR), hottestC(plan, ActKind.PACK, ActKind.BREAK));
    }

    private static double hottestC(Plan plan, ActKind from, ActKind until) {
        return plan.acts().stream()
                .filter(act -> act.kind() == from)
                .flatMap(begins -> plan.course().stream()
                        .filter(sample -> sample.at().isAfter(begins.startsAt())
                                && sample.at().isBefore(first(plan, until).startsAt())))
                .mapToDouble(sample -> sample.state().grainC())
                .max()
                .orElse(-50);
    }

    static Act first(Plan plan, ActKind kind) {
        return plan.acts().stream()
                .filter(act -> act.kind() == kind)
                .findFirst()
                .orElseThrow();
    }

    /** Whether acts of a kind are among a plan's. */
    static boolean has(Plan plan, ActKind kind) {
        return plan.acts().stream().anyMatch(act -> act.kind() == kind);
    }
}
