package piecewright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import piecewright.plan.Bill;
import piecewright.plan.DemoPlan;
import piecewright.plan.Plan;
import piecewright.plan.Rule;
import piecewright.plan.RunnerUp;

class CostPageTest {
    @Test
    void everyRuleHasWords() {
        List<String> words = Arrays.stream(Rule.values())
                .map(rule -> Phrases.say("rule." + rule.key()))
                .toList();

        assertEquals(words.size(), words.stream().distinct().count());
    }

    @Test
    void aCheaperPlanFoundByLookingLongerIsOwnedUpTo() {
        Plan plan = DemoPlan.plan();
        Plan cheaper = plan.withFindings(List.of());
        Bill bill = new Bill(List.of(new Bill.Item("steep-1.soak", Rule.WORK, plan.costMinutes() - 3)));
        Plan found = new Plan(
                cheaper.subject(),
                cheaper.outcome(),
                cheaper.acts(),
                cheaper.phases(),
                List.of(),
                cheaper.course(),
                bill);
        RunnerUp runnerUp = new RunnerUp(found, List.of(new Bill.Difference(Rule.HOUR, -3)));

        String words = new CostPage(plan, DisplayUnits.metric()).lost(runnerUp);

        assertTrue(words.contains("3.0 less") && words.contains("an early, late or night hour 3.0"), words);
    }

    @Test
    void everyActIsListedWithItsRulesAndTheSumIsSaid() {
        Plan plan = DemoPlan.plan();

        String page = new CostPage(plan, DisplayUnits.metric()).of(Optional.empty());

        assertTrue(page.lines().anyMatch(line -> line.contains("Soak 1") && line.contains("work 30")), page);
        assertTrue(page.contains("All steps together cost " + Math.round(plan.costMinutes()) + ":"), page);
        assertTrue(page.contains("No plan was found that begins at another time."), page);
    }

    @Test
    void theNextBestPlanIsSaidToHaveLostForWhatItPaysMore() {
        Plan plan = DemoPlan.plan();
        Bill dearer = new Bill(List.of(new Bill.Item("steep-1.soak", Rule.WORK, plan.costMinutes() + 6)));
        Plan later =
                new Plan(plan.subject(), plan.outcome(), plan.acts(), plan.phases(), List.of(), plan.course(), dearer);
        RunnerUp late = new RunnerUp(
                later, List.of(new Bill.Difference(Rule.READY_BY, 10), new Bill.Difference(Rule.HOUR, -3.75)));

        String page = new CostPage(plan, DisplayUnits.metric()).lost(late);

        assertTrue(page.contains("It pays more for: rest lost or days idle before the malt is wanted 10."), page);
        assertTrue(page.contains("It pays less for: an early, late or night hour 3.8."), page);
    }
}
