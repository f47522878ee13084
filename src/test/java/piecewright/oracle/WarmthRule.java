package piecewright.oracle;

import java.util.ArrayList;
import java.util.List;

/** No first plan lets a growing bed be found more than 4 K over the warmest its style allows. */
final class WarmthRule {
    private static final double OVER_K = 4;

    private WarmthRule() {}

    static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        if (!one.first()) return faults;
        boolean growing = false;
        for (Told.Step step : one.told().steps()) {
            double c = step.expect().grainC();
            if (growing && c > one.norms().warmestGrainC() + OVER_K) {
                faults.add(new Fault(
                        "bed too warm",
                        step.id(),
                        c + " °C, style " + one.norms().warmestGrainC()));
            }
            if (step.is("floor")) growing = true;
            if (step.is("pack", "stew", "load")) growing = false;
        }
        return faults;
    }
}
