package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Bill.Item;

/** What a plan costs, taken apart. */
class BillTest {
    private static Plan plan(PlanRequest request) {
        PlanResult result = new Planner(ModelParameters.defaults()).plan(request);
        return ((PlanResult.Planned) result).plan();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 11})
    void everyActIsChargedAndNothingElseIs(long seed) {
        Plan plan = plan(Seeded.request(seed));

        Set<String> acts = plan.acts().stream().map(Act::id).collect(Collectors.toSet());
        Set<String> charged = plan.bill().items().stream().map(Item::actId).collect(Collectors.toSet());

        assertEquals(acts, charged);
    }

    /** A rule charged to the wrong act would leave a gap that costs less than nothing. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 11})
    void nothingIsPaidBack(long seed) {
        everyChargeIsAPrice(plan(Seeded.request(seed)));
    }

    @Test
    void nothingIsPaidBackInACouchedPlan() {
        everyChargeIsAPrice(CouchedDemo.plan());
    }

    private static void everyChargeIsAPrice(Plan plan) {
        for (Item item : plan.bill().items()) {
            assertTrue(item.costMinutes() > 0 && item.costMinutes() < 1e6, item.toString());
        }
    }

    @Test
    void theNextBestPlanBeginsAtAnotherTimeAndIsDearer() {
        PlanRequest request = Seeded.request(1);
        Plan chosen = plan(request);

        RunnerUp runnerUp = new Planner(ModelParameters.defaults())
                .runnerUp(request, chosen)
                .orElseThrow();

        assertNotEquals(chosen.startsAt(), runnerUp.plan().startsAt());
        assertTrue(runnerUp.moreMinutes(chosen) > -1, "more by " + runnerUp.moreMinutes(chosen));
        double because = runnerUp.because().stream()
                .mapToDouble(Bill.Difference::moreMinutes)
                .sum();
        assertEquals(runnerUp.moreMinutes(chosen), because, 0.5 * Rule.values().length);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 11})
    void workIsChargedByTheMinute(long seed) {
        Plan plan = plan(Seeded.request(seed));

        double worked =
                plan.acts().stream().mapToDouble(act -> act.work().toMinutes()).sum();

        assertEquals(worked, plan.bill().byRule().get(Rule.WORK), 1e-6);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 11})
    void timeIsChargedFromTheFirstActToTheLast(long seed) {
        Plan plan = plan(Seeded.request(seed));

        double minutes = java.time.Duration.between(
                        plan.startsAt(), plan.acts().get(plan.acts().size() - 1).startsAt())
                .toMinutes();
        Rules rules = new Rules(Households.pale(), 0);

        assertEquals(rules.timePasses(minutes), plan.bill().byRule().get(Rule.TIME), 1e-6);
    }

    /** The rules themselves are asked again, with what the plan says of the act: nothing is left to gaps but gaps. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 5, 11})
    void onlyActsThatEndAPhaseWithTurningsAreChargedForThem(long seed) {
        Plan plan = plan(Seeded.request(seed));

        Set<String> chargedForGaps = plan.bill().items().stream()
                .filter(item -> item.rule() == Rule.TURNINGS)
                .map(Item::actId)
                .collect(Collectors.toSet());

        assertTrue(Set.of("floor.wither", "kiln.load").containsAll(chargedForGaps), chargedForGaps.toString());
        Set<String> chargedForStirs = plan.bill().items().stream()
                .filter(item -> item.rule() == Rule.STIRRINGS)
                .map(Item::actId)
                .collect(Collectors.toSet());
        assertTrue(chargedForStirs.stream().allMatch(id -> id.startsWith("kiln.")), chargedForStirs.toString());
    }

    @Test
    void anotherPlanIsSaidToCostMoreWhereItDoes() {
        Bill mine = new Bill(List.of(new Item("a", Rule.WORK, 30), new Item("b", Rule.HOUR, 10)));
        Bill theirs = new Bill(List.of(new Item("a", Rule.WORK, 20), new Item("b", Rule.TIME, 40)));

        List<Bill.Difference> differences = mine.against(theirs);

        assertEquals(
                List.of(
                        new Bill.Difference(Rule.TIME, 40),
                        new Bill.Difference(Rule.WORK, -10),
                        new Bill.Difference(Rule.HOUR, -10)),
                differences);
        assertEquals(
                theirs.totalMinutes() - mine.totalMinutes(),
                differences.stream().mapToDouble(Bill.Difference::moreMinutes).sum(),
                1e-9);
    }
}
