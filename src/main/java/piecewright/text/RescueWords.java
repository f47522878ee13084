package piecewright.text;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;
import piecewright.replan.Rescue;

/** What practice does about something, in words. */
final class RescueWords {
    private final QuantityFormat quantities;
    private final MomentFormat moments;

    RescueWords(DisplayUnits units, ZoneId zone) {
        this.quantities = new QuantityFormat(units);
        this.moments = new MomentFormat(zone, units.locale());
    }

    /** @param when when an act of the plan stands, by id */
    String sentence(Rescue rescue, Function<String, Optional<Instant>> when) {
        String key = "rescue." + Phrases.key(rescue.rule());
        boolean unknown =
                rescue.rule() == Rescue.Rule.DRY_ROOTS && rescue.waterKg().isEmpty();
        String water = rescue.waterKg().isPresent()
                ? quantities.volume(rescue.waterKg().getAsDouble())
                : "";
        String words = Phrases.say(quantities, unknown ? key + ".amount-unknown" : key, water);
        return rescue.actId()
                .flatMap(id -> when.apply(id)
                        .map(at -> Phrases.say("rescue.with-act", words, ActNames.byId(id), moments.moment(at))))
                .orElse(words);
    }
}
