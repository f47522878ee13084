package piecewright.oracle;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Over 60 °C somebody is there from the moment heat is set until the next setting or the end, unless the heater is
 * declared safe alone. Common practice, no source. Heat that was set before a re-plan counts from then on, as far as
 * anybody was there in between to turn it down.
 */
final class HeatRule {
    private HeatRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Told.Step> heats = one.told().steps().stream()
                .filter(step -> step.is("load", "raise", "lower", "cure", "off"))
                .toList();
        for (int i = 0; i < heats.size(); i++) {
            Told.Step set = heats.get(i);
            if (set.is("off") || set.setC().isEmpty()) continue;
            if (one.home().leaves(set.place(), set.setC().getAsDouble())) continue;
            Instant until = i + 1 < heats.size() ? heats.get(i + 1).at() : set.until();
            Instant from = one.done().contains(set.id()) ? handsBack(one, until) : set.at();
            alone(one.home(), from, until)
                    .ifPresent(since -> faults.add(new Fault(
                            "heat with nobody there",
                            set.id(),
                            set.setC().getAsDouble() + " °C alone from "
                                    + since.atZone(one.home().zone()) + " for up to "
                                    + Duration.between(since, until).toMinutes() + " min")));
        }
        for (Told.Step block : one.toCome()) {
            if (one.home().leaves(block.place(), block.hottestC().orElse(0))) continue;
            if (block.hottestC().isEmpty()) continue;
            alone(one.home(), block.at(), block.until())
                    .ifPresent(since -> faults.add(new Fault("heat with nobody there", block.id(), "block, " + since)));
        }
        return faults;
    }

    /** When somebody is first there after now to turn down what was set before. */
    private static Instant handsBack(Case one, Instant until) {
        Instant at = one.now().orElse(until);
        while (at.isBefore(until) && !one.home().anybodyThere(at)) at = at.plusSeconds(60);
        return at;
    }

    /** From when on nobody is there in this stretch; people who come later do not make up for it. */
    private static Optional<Instant> alone(Home home, Instant from, Instant until) {
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(60)) {
            if (!home.anybodyThere(at)) return Optional.of(at);
        }
        return Optional.empty();
    }
}
