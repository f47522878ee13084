package piecewright.text;

import java.util.List;
import piecewright.plan.Arranging.Choice;
import piecewright.plan.Bill;
import piecewright.plan.Finding.Chosen;
import piecewright.plan.Setting;

/** How something that was left open was settled, and what spoke for it. */
final class ChosenWords {
    private final QuantityFormat quantities;

    ChosenWords(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    String sentence(Chosen chosen) {
        String taken = way(chosen.choice(), chosen.taken().setting());
        String cost = whole(chosen.taken().costMinutes());
        if (chosen.lost().isEmpty()) return Phrases.say("finding.chosen.only", taken, cost);
        Chosen.Lost lost = chosen.lost().get();
        String other = way(chosen.choice(), lost.way().setting());
        String key = lost.because().isEmpty() ? "finding.chosen.even" : "finding.chosen.over";
        return Phrases.say(key, taken, cost, other, whole(lost.way().costMinutes()), reasons(lost.because()));
    }

    private String way(Choice choice, Setting setting) {
        return switch (choice) {
            case PLACE -> Phrases.say("finding.chosen.place", setting.place().orElseThrow());
            case BED ->
                Phrases.say(
                        "finding.chosen.bed",
                        quantities.length(setting.depthCm().orElseThrow()));
            case WATER ->
                Phrases.say(
                        "finding.chosen.water",
                        quantities.temperature(setting.setC().orElseThrow()));
        };
    }

    private static String reasons(List<Bill.Difference> because) {
        return String.join(
                ", ",
                because.stream()
                        .map(one -> Phrases.say(
                                "costs.part", Phrases.say("rule." + one.rule().key()), whole(one.moreMinutes())))
                        .toList());
    }

    private static String whole(double minutes) {
        return Long.toString(Math.round(minutes));
    }
}
