package piecewright.text;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import piecewright.plan.Act;
import piecewright.plan.ActKind;
import piecewright.plan.InnerSchedule;
import piecewright.plan.InnerSchedule.InnerStep;
import piecewright.quantity.Moisture;

/** The minutes of an attended block, one sentence each. */
final class InnerWords {
    private final QuantityFormat quantities;

    InnerWords(QuantityFormat quantities) {
        this.quantities = quantities;
    }

    /** What goes in, how it lags, how far to trust the dial. */
    String head(InnerSchedule inner) {
        return Phrases.say(
                "inner.head",
                quantities.mass(inner.loadKg()),
                quantities.length(inner.depthCm()),
                quantities.time(inner.lag()),
                quantities.temperatureStep(inner.ovenErrorK()));
    }

    /** Every step, with its minute before it. */
    List<String> rows(Act act) {
        List<String> rows = new ArrayList<>();
        act.inner()
                .ifPresent(inner -> inner.steps()
                        .forEach(step ->
                                rows.add(Phrases.say("inner.row", timer(step.at()), sentence(act.kind(), step)))));
        return rows;
    }

    /** As a timer counts: minutes, and seconds where there are any. */
    static String timer(Duration at) {
        String minutes = Long.toString(at.toMinutes());
        return at.toSecondsPart() == 0 ? minutes : String.format(Locale.ROOT, "%s:%02d", minutes, at.toSecondsPart());
    }

    /** What a step asks for, without its minute. */
    String sentence(ActKind kind, InnerStep step) {
        String suffix = kind == ActKind.STEW ? "-stew" : "-roast";
        String grain = quantities.temperature(Math.rint(step.expect().grainC()));
        String colour = quantities.colour(step.expect().colourEbc());
        return switch (step.kind()) {
            case PREPARE -> Phrases.say("inner.prepare", dial(step), oven(step));
            case GOES_IN -> Phrases.say("inner.goes-in", oven(step));
            case SET -> Phrases.say("inner.set", dial(step), oven(step), grain);
            case STIR -> Phrases.say("inner.stir", grain);
            case SAMPLE, SAMPLE_AGAIN, STOP ->
                Phrases.say("inner." + step.kind().key() + suffix, kind == ActKind.STEW ? grain : colour, grain);
            case LATEST -> Phrases.say("inner.latest");
            case OVER ->
                Phrases.say(
                        quantities,
                        "inner.over",
                        colour,
                        quantities.moisture(new Moisture(step.expect().moistureFraction())));
        };
    }

    private String dial(InnerStep step) {
        return quantities.temperature(step.dialC().orElseThrow());
    }

    private String oven(InnerStep step) {
        return quantities.temperature(step.ovenC().orElseThrow());
    }
}
