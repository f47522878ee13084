package piecewright.store;

import java.util.List;
import piecewright.belief.Interval;
import piecewright.belief.Unknown;
import piecewright.history.Contradiction;
import piecewright.learn.Estimate;
import piecewright.learn.Estimate.Judged;
import piecewright.learn.Lessons.Outcome;
import piecewright.learn.Verdict;
import piecewright.text.LearnedPage;
import tools.jackson.databind.node.ObjectNode;

/** Writes what one batch taught as a JSON document, format 1. */
public final class LessonsJson {
    private LessonsJson() {}

    public static String write(String lot, Outcome outcome, LearnedPage words) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        ObjectNode node = root.putObject("lessons");
        node.put("lot", lot);
        node.put("learned", outcome instanceof Outcome.Taught);
        if (outcome instanceof Outcome.Taught taught) put(node, taught.estimate(), words);
        var leftOut = node.putArray("leftOut");
        List<Contradiction> contradictions = LearnedPage.leftOutOf(outcome);
        List<String> questions = words.questions(outcome);
        for (int i = 0; i < contradictions.size(); i++) {
            ObjectNode entry = leftOut.addObject();
            entry.put("entry", contradictions.get(i).entry());
            entry.put("question", questions.get(i));
        }
        return JsonText.write(root);
    }

    private static void put(ObjectNode node, Estimate estimate, LearnedPage words) {
        var traits = node.putArray("traits");
        for (Unknown unknown : estimate.prior().unknowns()) {
            ObjectNode trait = traits.addObject();
            trait.put("trait", unknown.trait().key());
            trait.put("of", unknown.item());
            put(trait.putObject("before"), estimate.prior().interval(unknown));
            put(trait.putObject("now"), estimate.posterior().interval(unknown));
        }
        var readings = node.putArray("readings");
        for (Judged judged : estimate.observations()) {
            ObjectNode reading = readings.addObject();
            reading.put("entry", Integer.parseInt(judged.observation().key()));
            reading.put("read", judged.observation().value());
            reading.put("unit", judged.observation().figure().unit());
            put(reading.putObject("expected"), judged.expected());
            if (judged.verdict() instanceof Verdict.Questioned) reading.put("question", words.question(judged));
        }
    }

    private static void put(ObjectNode node, Interval interval) {
        node.put("p10", interval.low());
        node.put("p50", interval.middle());
        node.put("p90", interval.high());
    }
}
