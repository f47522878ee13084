package piecewright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.Plan;
import piecewright.plan.Setting;
import piecewright.quantity.Moisture;
import piecewright.style.MaltStyle;

/** What a step sets, and what its measurement decides, in one short line. */
public final class Decides {
    /** What is said of a step that sets and decides nothing. */
    public static final String NOTHING = "–";

    private final MaltStyle style;
    private final QuantityFormat quantities;
    private final Optional<Act> lastDrain;

    public Decides(MaltStyle style, Plan plan, DisplayUnits units) {
        this.style = style;
        this.quantities = new QuantityFormat(units);
        this.lastDrain =
                plan.acts().stream().filter(act -> act.kind() == ActKind.DRAIN).reduce((first, second) -> second);
    }

    /** "bed 5 cm, needs 4 in 5 chitted", or {@link #NOTHING}. */
    public String of(Act act) {
        List<String> words = new ArrayList<>(sets(act.setting()));
        decides(act).ifPresent(words::add);
        return words.isEmpty() ? NOTHING : String.join(", ", words);
    }

    private List<String> sets(Setting setting) {
        List<String> words = new ArrayList<>();
        Optional<String> warmth = setting.setC().isPresent()
                ? Optional.of(quantities.temperature(setting.setC().getAsDouble()))
                : Optional.empty();
        if (setting.waterL().isPresent()) {
            String water = quantities.volume(setting.waterL().getAsDouble());
            words.add(warmth.map(at -> Phrases.say("page.set.water-at", water, at))
                    .orElseGet(() -> Phrases.say("page.set.water", water)));
        } else {
            warmth.ifPresent(at -> words.add(Phrases.say("page.set.air", at)));
        }
        setting.limitC().ifPresent(limitC -> words.add(Phrases.say("page.set.limit", quantities.temperature(limitC))));
        setting.depthCm().ifPresent(depthCm -> words.add(Phrases.say("page.set.bed", quantities.length(depthCm))));
        return words;
    }

    private Optional<String> decides(Act act) {
        if (act.setting().gateFraction().isPresent()) {
            double gate = act.setting().gateFraction().getAsDouble();
            return Optional.of(Phrases.say("onepage.decides.gate", weightAt(act, gate), moisture(gate)));
        }
        if (lastDrain.filter(act::equals).isPresent()) {
            double least = style.steep().acceptable().lowFraction();
            return Optional.of(Phrases.say("onepage.decides.last-drain", weightAt(act, least)));
        }
        return switch (act.kind()) {
            case FLOOR -> Optional.of(Phrases.say("onepage.decides.spread"));
            case LOAD, PACK, WITHER, STEW ->
                act.expect().acrospireFraction().isPresent()
                        ? Optional.of(Phrases.say(
                                "onepage.decides.grown",
                                quantities.percent(
                                        act.expect().acrospireFraction().getAsDouble())))
                        : Optional.empty();
            default -> Optional.empty();
        };
    }

    /** What the batch weighs at this moisture: its dry matter over what is not water. */
    private String weightAt(Act act, double moistureFraction) {
        double dryKg = act.expect().massKg() * (1 - act.expect().moisture().wetBasisFraction());
        return quantities.scaleMass(dryKg / (1 - moistureFraction));
    }

    private String moisture(double fraction) {
        return quantities.moisture(new Moisture(fraction));
    }
}
