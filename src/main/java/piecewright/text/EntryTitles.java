package piecewright.text;

import java.util.OptionalDouble;
import piecewright.plan.Act;
import piecewright.plan.Setting;
import piecewright.quantity.Moisture;

/** What an act is called where one line must tell what counts: its target, or what was found. */
public final class EntryTitles {
    private final QuantityFormat quantities;

    public EntryTitles(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    /** "Drain 1 → 6.370 kg", "Raise to 60 °C below 23 %", "Turn 3". */
    public String toDo(Act act) {
        String name = ActNames.title(act.kind(), act.id());
        Setting setting = act.setting();
        return switch (act.kind()) {
            case DRAIN, PACK, BREAK, LOAD, OFF, DEROOT -> Phrases.say("entry-title.weigh", name, mass(act));
            case RAISE -> setting.setC().isPresent() ? heat(act, "entry-title.raise", name) : name;
            case CURE -> setting.setC().isPresent() ? heat(act, "entry-title.cure", name) : name;
            case SOAK -> with("entry-title.soak", name, setting.setC());
            case LOOK, CHECK -> with("entry-title.limit", name, setting.limitC());
            case SPRINKLE ->
                setting.waterL().isPresent()
                        ? Phrases.say(
                                "entry-title.water",
                                name,
                                quantities.volume(setting.waterL().getAsDouble()))
                        : name;
            default -> name;
        };
    }

    private String with(String key, String name, OptionalDouble temperatureC) {
        return temperatureC.isPresent()
                ? Phrases.say(key, name, quantities.temperature(temperatureC.getAsDouble()))
                : name;
    }

    private String heat(Act act, String key, String name) {
        Setting setting = act.setting();
        String heat = quantities.temperature(setting.setC().orElseThrow());
        return setting.gateFraction().isPresent()
                ? Phrases.say(
                        key + ".below",
                        name,
                        heat,
                        quantities.moisture(new Moisture(setting.gateFraction().getAsDouble())))
                : Phrases.say(key, name, heat);
    }

    private String mass(Act act) {
        return quantities.mass(act.expect().massKg());
    }

    /** "✓ Drain 1: 6.400 kg"; without a figure where none was found. */
    public String done(Act act, OptionalDouble massKg, OptionalDouble grainC) {
        String name = ActNames.title(act.kind(), act.id());
        if (massKg.isPresent())
            return Phrases.say("entry-title.done.found", name, quantities.mass(massKg.getAsDouble()));
        if (grainC.isPresent()) {
            return Phrases.say("entry-title.done.found", name, quantities.temperature(grainC.getAsDouble()));
        }
        return Phrases.say("entry-title.done", name);
    }

    /** When it was done. */
    public String doneAt(String moment) {
        return Phrases.say("entry-title.done.at", moment);
    }

    /** What the plan foresaw on the scale. */
    public String foreseen(Act act) {
        return Phrases.say("entry-title.foreseen", mass(act));
    }
}
