package piecewright.oracle;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/**
 * Over 60 °C somebody is there from the moment heat is set until the next setting or the end, unless the heater is
 * declared safe alone. Common practice, no source. Heat that was set before a re-plan counts from then on, as far as
 * anybody was there in between to turn it down.
 */
final class HeatRule {
    private static final double ATTENDED_ABOVE_C = 60;

    private HeatRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Told.Step> heats = one.told().steps().stream()
                .filter(step -> step.is("load", "raise", "cure", "off"))
                .toList();
        for (int i = 0; i < heats.size(); i++) {
            Told.Step set = heats.get(i);
            if (set.is("off") || set.setC().orElse(0) <= ATTENDED_ABOVE_C || one.home().safe(set.place())) continue;
            Instant until = i + 1 < heats.size() ? heats.get(i + 1).at() : set.until();
            Instant from = one.done().contains(set.id()) ? one.now().orElse(set.at()) : set.at();
            alone(one.home(), from, until).ifPresent(since -> faults.add(new Fault(
                    "heat with nobody there",
                    set.id(),
                    set.setC().getAsDouble() + " °C alone from " + since.atZone(one.home().zone()) + " for up to "
                            + Duration.between(since, until).toMinutes() + " min")));
        }
        for (Told.Step block : one.toCome()) {
            if (block.hottestC().orElse(0) <= ATTENDED_ABOVE_C || one.home().safe(block.place())) continue;
            alone(one.home(), block.at(), block.until())
                    .ifPresent(since -> faults.add(new Fault("heat with nobody there", block.id(), "block, " + since)));
        }
        return faults;
    }

    /** From when on nobody is there in this stretch; people who come later do not make up for it. */
    private static java.util.Optional<Instant> alone(Home home, Instant from, Instant until) {
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(60)) {
            if (!home.anybodyThere(at)) return java.util.Optional.of(at);
        }
        return java.util.Optional.empty();
    }
}
