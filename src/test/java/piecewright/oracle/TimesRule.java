package piecewright.oracle;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** One step after the other, each once, none before now; steps to come never begin before the last one is over. */
final class TimesRule {
    private TimesRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        Instant now = one.now().orElse(Instant.MIN);
        Instant earliest = now.equals(Instant.MIN) ? now : now.truncatedTo(ChronoUnit.MINUTES);
        Set<String> seen = new HashSet<>();
        Told.Step before = null;
        for (Told.Step step : one.told().steps()) {
            boolean open = !one.done().contains(step.id());
            if (!seen.add(step.id())) faults.add(new Fault("the same step twice", step.id(), ""));
            if (open && step.at().isBefore(earliest)) {
                faults.add(new Fault("a step before now", step.id(), step.at() + " at " + now));
            }
            if (before != null && step.at().isBefore(before.at())) {
                faults.add(
                        new Fault("not in time order", step.id(), before.id() + " " + before.at() + " " + step.at()));
            }
            boolean bothOpen = open && before != null && !one.done().contains(before.id());
            if (bothOpen && step.at().isBefore(before.until())) {
                faults.add(new Fault(
                        "begins before the last one is over",
                        step.id(),
                        before.id() + " until " + before.until() + ", " + step.at()));
            }
            before = step;
        }
        return faults;
    }
}
