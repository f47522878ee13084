package piecewright.plan.search;

import java.util.EnumMap;
import java.util.Map;
import piecewright.plan.Rule;

/** Takes down which rule charges a step what, while somebody asks; a search itself asks for nothing. Used by one thread. */
final class Toll {
    private final Map<Rule, Double> charged = new EnumMap<>(Rule.class);
    private boolean taken;

    /** Passes on what a rule charges for the step now weighed. */
    double charged(Rule rule, double minutes) {
        if (taken && minutes > 0) charged.merge(rule, minutes, Double::sum);
        return minutes;
    }

    /** From now on charges are taken down. */
    void begin() {
        taken = true;
        charged.clear();
    }

    void end() {
        taken = false;
    }

    /** The next step is weighed. */
    void nextStep() {
        if (taken) charged.clear();
    }

    /** What the step now weighed was charged so far. */
    Map<Rule, Double> step() {
        return new EnumMap<>(charged);
    }
}
