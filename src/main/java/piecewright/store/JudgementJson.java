package piecewright.store;

import java.util.Locale;
import piecewright.assess.LotJudgement;
import piecewright.text.JudgementPage;
import tools.jackson.databind.node.ObjectNode;

/** Writes a judgement of a lot as a JSON document, format 1. */
public final class JudgementJson {
    private final JudgementPage words;

    public JudgementJson(JudgementPage words) {
        this.words = words;
    }

    public String write(String lot, LotJudgement judgement) {
        ObjectNode root = JsonText.newObject();
        root.put("format", 1);
        ObjectNode node = root.putObject("judgement");
        node.put("lot", lot);
        node.put("verdict", key(judgement.verdict()));
        judgement.retestOn().ifPresent(day -> node.put("retestOn", day.toString()));
        judgement.counts().energy().ifPresent(energy -> {
            ObjectNode counted = node.putObject("germination");
            counted.put("germinated", energy.found());
            counted.put("corns", energy.corns());
            counted.put("wilsonLowFraction", energy.wilson().lowFraction());
            counted.put("wilsonHighFraction", energy.wilson().highFraction());
            counted.put("exactLowFraction", energy.clopperPearson().lowFraction());
            counted.put("exactHighFraction", energy.clopperPearson().highFraction());
        });
        var reasons = node.putArray("reasons");
        judgement.reasons().forEach(reason -> {
            ObjectNode said = reasons.addObject();
            said.put("speaksFor", key(reason.verdict()));
            said.put("text", words.reason(reason));
        });
        var tests = node.putArray("nextTests");
        judgement.nextTests().forEach(test -> {
            ObjectNode next = tests.addObject();
            next.put("kind", key(test.kind()));
            next.put("corns", test.corns());
        });
        ObjectNode effects = node.putObject("plan");
        effects.put("ungerminatedFraction", judgement.effects().deadFraction());
        effects.put("longerRestHours", judgement.effects().longerRestHours());
        effects.put("mouldRisk", key(judgement.effects().mould()));
        effects.put("coolerK", judgement.effects().coolerK());
        return JsonText.write(root);
    }

    private static String key(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
