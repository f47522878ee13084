package piecewright.oracle;

import java.util.ArrayList;
import java.util.List;

/**
 * Weights and moistures as told are one balance: dry matter only ever grows less, wet grain gains water only in water,
 * and what is promised at the end is what stands at the last step, once dried less than the grain it came from. Weights are told to the gram and moistures to a
 * hundredth of a per cent, so each dry weight is known to half a gram and a twenty-thousandth of the whole.
 */
final class MassRule {
    private MassRule() {}

    private static double roundingKg(Told.Step step) {
        return 0.0005 + step.expect().massKg() * 0.00005;
    }

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        List<Told.Step> steps = one.toCome();
        for (int i = 1; i < steps.size(); i++) {
            Told.Step before = steps.get(i - 1);
            Told.Step step = steps.get(i);
            double slackKg = roundingKg(before) + roundingKg(step);
            double gainedKg = step.expect().dryKg() - before.expect().dryKg();
            if (gainedKg > slackKg) faults.add(new Fault("dry matter from nothing", step.id(), gainedKg + " kg"));
            double heavierKg = step.expect().massKg() - before.expect().massKg();
            if (heavierKg > 0.0011 && !before.is("soak", "sprinkle")) {
                faults.add(new Fault("heavier out of the water", step.id(), heavierKg + " kg after " + before.id()));
            }
        }
        Told told = one.told();
        Told.Step last = told.steps().get(told.steps().size() - 1);
        boolean dries = steps.stream().anyMatch(step -> step.is("off"));
        if (told.usefulKg() > told.scaleKg() + 0.0011 || dries && told.scaleKg() > told.rawKg()) {
            faults.add(new Fault("promised more than there is", "plan", told.rawKg() + ", " + told.usefulKg()));
        }
        if (Math.abs(last.expect().massKg() - told.scaleKg()) > 0.0011) {
            faults.add(new Fault("two weights of the same malt", last.id(), last.expect() + ", " + told.scaleKg()));
        }
        return faults;
    }
}
