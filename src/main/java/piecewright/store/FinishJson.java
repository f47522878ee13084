package piecewright.store;

import java.util.List;
import piecewright.learn.Comparison;
import piecewright.learn.Comparison.InputDifference;
import piecewright.learn.Comparison.OutcomeDifference;
import piecewright.replan.Finished;
import piecewright.text.Phrases;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A finished batch, and two of them compared, as documents. */
public final class FinishJson {
    private FinishJson() {}

    /** What came of a batch, with the sentences of its page. */
    public static String finished(Finished finished, PlanTimes.Expected expected, List<String> sentences) {
        ObjectNode root = JsonText.newObject().put("format", 1);
        ObjectNode node = root.putObject("finished");
        Finished.Outcome outcome = finished.outcome();
        node.put("grainKg", PlanJson.rounded(outcome.grainKg(), 3));
        node.put("maltKg", PlanJson.rounded(outcome.maltKg(), 3));
        node.put("yieldFraction", PlanJson.rounded(outcome.yieldFraction(), 4));
        outcome.colourEbc().ifPresent(ebc -> node.put("colourEbc", PlanJson.rounded(ebc, 1)));
        ObjectNode plan = node.putObject("expected");
        plan.put("maltKg", PlanJson.rounded(expected.maltKg(), 3));
        plan.put("yieldFraction", PlanJson.rounded(expected.maltKg() / expected.grainKg(), 4));
        plan.put("colourEbc", PlanJson.rounded(expected.colourEbc(), 1));
        ArrayNode parts = node.putArray("stretches");
        finished.stretches()
                .forEach(stretch -> parts.addObject()
                        .put("part", Phrases.key(stretch.part()))
                        .put("minutes", stretch.lasted().toMinutes()));
        ArrayNode notes = node.putArray("notes");
        finished.notes().forEach(notes::add);
        ArrayNode missing = node.putArray("notDone");
        finished.notDone().forEach(missing::add);
        put(root, sentences);
        return JsonText.write(root);
    }

    /** Why a batch cannot be finished. */
    public static String notYet(String why) {
        ObjectNode root = JsonText.newObject().put("format", 1);
        root.putArray("obstacles").addObject().put("text", why);
        return JsonText.write(root);
    }

    /** Two batches held against each other, with the sentences of their page. */
    public static String compared(Comparison comparison, List<String> sentences) {
        ObjectNode root = JsonText.newObject().put("format", 1);
        ObjectNode node = root.putObject("comparison");
        node.put("differInOneThing", comparison.differInOneThing());
        ArrayNode inputs = node.putArray("inputs");
        for (InputDifference input : comparison.inputs()) {
            ObjectNode one = inputs.addObject().put("name", input.name());
            input.first().ifPresent(value -> one.put("first", value));
            input.second().ifPresent(value -> one.put("second", value));
        }
        ArrayNode outcomes = node.putArray("outcomes");
        for (OutcomeDifference outcome : comparison.outcomes()) {
            ObjectNode one = outcomes.addObject().put("name", outcome.name());
            one.put("p10", outcome.change().low());
            one.put("p50", outcome.change().middle());
            one.put("p90", outcome.change().high());
            one.put("byChanceFraction", PlanJson.rounded(outcome.byChanceFraction(), 4));
            one.put("moreThanNoise", outcome.isMoreThanNoise());
        }
        put(root, sentences);
        return JsonText.write(root);
    }

    private static void put(ObjectNode root, List<String> sentences) {
        ArrayNode list = root.putArray("sentences");
        sentences.forEach(list::add);
    }
}
