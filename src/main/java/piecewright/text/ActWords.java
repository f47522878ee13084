package piecewright.text;

import java.util.StringJoiner;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Setting;
import piecewright.process.couch.CouchProbe;
import piecewright.quantity.Moisture;

/** What to do at an act, with its settings. */
final class ActWords {
    private final QuantityFormat quantities;

    ActWords(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    String whatToDo(Act act) {
        Setting setting = act.setting();
        StringJoiner words = new StringJoiner(" ");
        words.add(Phrases.say(quantities, ActNames.words(act.kind(), act.id()) + ".do"));
        setting.place().ifPresent(place -> words.add(Phrases.say("set.place", place)));
        setting.waterL().ifPresent(waterL -> words.add(Phrases.say("set.water", quantities.volume(waterL))));
        setting.setC().ifPresent(setC -> words.add(Phrases.say(heatKey(act.kind()), quantities.temperature(setC))));
        setting.depthCm().ifPresent(depthCm -> words.add(Phrases.say("set.depth", quantities.length(depthCm))));
        setting.limitC().ifPresent(limitC -> words.add(couch(act, limitC)));
        setting.gateFraction().ifPresent(gateFraction -> words.add(gate(act, gateFraction)));
        return words.toString();
    }

    private static String heatKey(ActKind kind) {
        return kind == ActKind.SOAK || kind == ActKind.SPRINKLE ? "set.waterAt" : "set.airOn";
    }

    /** What the thermometer should read where it sticks, and when to spread the pile. */
    private String couch(Act act, double limitC) {
        String limit = Phrases.say("set.limit", quantities.temperature(limitC));
        if (!act.kind().looksIntoAHeap()) return limit;
        double meanC = act.expect().grainC();
        return Phrases.say(
                        "set.probe",
                        quantities.temperature(CouchProbe.MIDDLE.readingC(meanC)),
                        quantities.temperature(CouchProbe.BOTTOM.readingC(meanC)))
                + " "
                + limit;
    }

    private String gate(Act act, double gateFraction) {
        double dryKg = act.expect().massKg() * (1 - act.expect().moisture().wetBasisFraction());
        return Phrases.say(
                "set.gate",
                quantities.moisture(new Moisture(gateFraction)),
                quantities.mass(dryKg / (1 - gateFraction)));
    }
}
