package piecewright.store;

import java.util.Optional;
import piecewright.plan.Act;
import piecewright.plan.Bill;
import piecewright.plan.Plan;
import piecewright.plan.RunnerUp;
import tools.jackson.databind.node.ObjectNode;

/** Adds to a plan's document what the plan costs, act by act and rule by rule, and the next best plan. */
public final class CostJson {
    private CostJson() {}

    /** The document of this plan with a key {@code costs} in its plan. */
    public static String added(String document, Plan plan, Optional<RunnerUp> runnerUp) {
        ObjectNode root = (ObjectNode) JsonText.reread(document);
        ObjectNode costs = ((ObjectNode) root.get("plan")).putObject("costs");
        costs.put("minutes", PlanJson.rounded(plan.costMinutes(), 2));
        var acts = costs.putArray("acts");
        for (Act act : plan.acts()) {
            ObjectNode node = acts.addObject();
            node.put("id", act.id());
            ObjectNode rules = node.putObject("rules");
            for (Bill.Item item : plan.bill().of(act.id())) {
                rules.put(item.rule().key(), PlanJson.rounded(item.costMinutes(), 2));
            }
        }
        runnerUp.ifPresent(found -> write(found, plan, costs.putObject("runnerUp")));
        return JsonText.write(root);
    }

    private static void write(RunnerUp runnerUp, Plan chosen, ObjectNode node) {
        node.put(
                "startsAt",
                PlanJson.moment(runnerUp.plan().startsAt(), chosen.subject().zone()));
        node.put("minutes", PlanJson.rounded(runnerUp.plan().costMinutes(), 2));
        ObjectNode because = node.putObject("payingMoreFor");
        runnerUp.because().forEach(one -> because.put(one.rule().key(), PlanJson.rounded(one.moreMinutes(), 2)));
    }
}
