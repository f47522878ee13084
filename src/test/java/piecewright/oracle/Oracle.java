package piecewright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Judges a plan by what its files say and it tells itself; nothing here is computed by the program. Its tests break
 * every rule once.
 */
public final class Oracle {
    private static final List<Function<Case, List<Fault>>> RULES = List.of(
            HoursRule::faults,
            HeatRule::faults,
            OrderRule::faults,
            TimesRule::faults,
            MassRule::faults,
            WarmthRule::faults,
            PhasesRule::faults);

    private Oracle() {}

    public static List<Fault> faults(Case one) {
        List<Fault> faults = new ArrayList<>();
        RULES.forEach(rule -> faults.addAll(rule.apply(one)));
        return faults;
    }
}
