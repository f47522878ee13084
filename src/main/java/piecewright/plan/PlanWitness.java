package piecewright.plan;

import java.util.Optional;

/**
 * Sees every plan that is proposed, first plans, plans of the rest and those of remedies alike. Found by
 * {@link java.util.ServiceLoader}; the program brings none, tests bring checks of their own. May be asked by several
 * threads at once.
 */
public interface PlanWitness {
    /** @param begun what had happened before a plan of the rest; empty for a first plan */
    void saw(PlanRequest request, Optional<Begun> begun, Plan plan);
}
