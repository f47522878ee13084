package piecewright.plan;

import java.util.List;
import java.util.Optional;
import java.util.ServiceLoader;

/** Whoever wants to see each plan as it is made. */
final class Witnesses {
    private static final List<PlanWitness> ALL =
            ServiceLoader.load(PlanWitness.class, PlanWitness.class.getClassLoader()).stream()
                    .map(ServiceLoader.Provider::get)
                    .toList();

    private Witnesses() {}

    /** The plan, once all have seen it. */
    static Plan shown(PlanRequest request, Optional<Begun> begun, Plan plan) {
        ALL.forEach(witness -> witness.saw(request, begun, plan));
        return plan;
    }
}
