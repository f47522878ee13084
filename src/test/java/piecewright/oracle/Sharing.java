package piecewright.oracle;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** No heater and no box holds two batches at once; what is on it already is a fact and no fault of a plan. */
public final class Sharing {
    private Sharing() {}

    private record Use(String what, String step, Instant from, Instant until) {
        boolean meets(Use other) {
            return what.equals(other.what) && from.isBefore(other.until) && other.from.isBefore(until);
        }
    }

    /** @param done steps of the first plan that were done when it was made */
    public static List<Fault> faults(Told mine, Set<String> done, Told other) {
        List<Fault> faults = new ArrayList<>();
        for (Use use : uses(mine)) {
            if (done.contains(use.step())) continue;
            for (Use theirs : uses(other)) {
                if (use.meets(theirs)) {
                    faults.add(new Fault("kit used twice", use.step(), use + " and " + theirs));
                }
            }
        }
        return faults;
    }

    private static List<Use> uses(Told told) {
        List<Use> uses = new ArrayList<>();
        for (int i = 0; i < told.steps().size(); i++) {
            Told.Step step = told.steps().get(i);
            List<Told.Step> later = told.steps().subList(i + 1, told.steps().size());
            if (step.is("stew", "roast")) uses.add(new Use(step.place(), step.id(), step.at(), step.until()));
            else if (step.is("load")) uses.add(use(step, later, "off"));
            else if (step.is("pack")) uses.add(use(step, later, "break"));
        }
        return uses;
    }

    /** From this step to the end of the one that frees its kit, or that goes on with other kit. */
    private static Use use(Told.Step step, List<Told.Step> later, String frees) {
        Instant until = step.until();
        for (Told.Step next : later) {
            boolean elsewhere = next.is("cure") && !next.place().equals(step.place());
            until = next.until();
            if (next.is(frees) || elsewhere) break;
        }
        return new Use(step.place(), step.id(), step.at(), until);
    }
}
