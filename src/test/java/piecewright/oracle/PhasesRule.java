package piecewright.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;

/** From the first step until the malt is ready one phase follows the other; what is stewed or roasted fills its gap. */
final class PhasesRule {
    private PhasesRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Told.Stretch> phases = one.told().phases();
        if (phases.isEmpty()) return List.of(new Fault("no phases", "plan", ""));
        for (int i = 0; i < phases.size(); i++) {
            Told.Stretch phase = phases.get(i);
            if (!phase.from().isBefore(phase.until())) faults.add(new Fault("a phase of no length", phase.id(), ""));
            if (i == 0) continue;
            Told.Stretch before = phases.get(i - 1);
            Instant goesOn = over(one.told().steps(), before.until());
            if (!goesOn.equals(phase.from())) {
                faults.add(new Fault("phases do not join", phase.id(), before.until() + ", " + phase.from()));
            }
        }
        if (!phases.get(0).from().equals(one.told().steps().get(0).at())) {
            faults.add(new Fault(
                    "phases do not begin with the first step", phases.get(0).id(), ""));
        }
        Told.Stretch last = phases.get(phases.size() - 1);
        if (!last.until().equals(one.told().readyAt())) {
            faults.add(new Fault("phases do not last until the malt is ready", last.id(), last.until() + ""));
        }
        return faults;
    }

    /**
     * When what begins as a phase ends is over, roast after roast, or the stew with its loading: from then on the grain
     * is in a phase again.
     */
    private static Instant over(List<Told.Step> steps, Instant until) {
        return steps.stream()
                .filter(step -> step.is("stew", "roast") && step.at().equals(until))
                .findFirst()
                .map(block -> block.is("stew") ? loaded(steps, block) : over(steps, block.until()))
                .orElse(until);
    }

    private static Instant loaded(List<Told.Step> steps, Told.Step stew) {
        return steps.stream()
                .filter(step -> step.is("load"))
                .map(Told.Step::at)
                .findFirst()
                .orElse(stew.until());
    }
}
