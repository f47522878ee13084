package piecewright.store;

import piecewright.belief.Belief;
import piecewright.belief.Interval;
import piecewright.belief.Unknown;
import piecewright.learn.Learned;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Writes what was learned of a lot or a house as a JSON document, format 1: before and now, P10, P50 and P90. */
public final class LearnedJson {
    private LearnedJson() {}

    public static String write(String name, Belief stated, Learned learned) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        ObjectNode node = root.putObject("learned");
        node.put("name", name);
        ArrayNode batches = node.putArray("batches");
        learned.chapters().forEach(chapter -> {
            ObjectNode batch = batches.addObject();
            batch.put("batch", chapter.batch().toString());
            batch.put("learnedAt", chapter.learnedAt().toString());
        });
        Belief now = learned.believed(stated);
        ArrayNode traits = node.putArray("traits");
        for (Unknown unknown : stated.unknowns()) {
            ObjectNode trait = traits.addObject();
            trait.put("trait", unknown.trait().key());
            trait.put("of", unknown.item());
            put(trait.putObject("before"), stated.interval(unknown));
            put(trait.putObject("now"), now.interval(unknown));
        }
        return JsonText.write(root);
    }

    private static void put(ObjectNode node, Interval interval) {
        node.put("p10", interval.low());
        node.put("p50", interval.middle());
        node.put("p90", interval.high());
    }
}
