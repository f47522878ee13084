package piecewright.oracle;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.atomic.AtomicLong;
import piecewright.plan.Begun;
import piecewright.plan.Plan;
import piecewright.plan.PlanRequest;
import piecewright.plan.PlanWitness;

/** Has the oracle judge every plan that any test makes; {@link PlansJudged} fails the test that made a bad one. */
public final class PlanWitnessed implements PlanWitness {
    private static final Queue<String> BAD = new ConcurrentLinkedQueue<>();
    private static final AtomicLong SEEN = new AtomicLong();

    @Override
    public void saw(PlanRequest request, Optional<Begun> begun, Plan plan) {
        SEEN.incrementAndGet();
        List<Fault> faults = Oracle.faults(Copied.of(request, begun, plan));
        if (faults.isEmpty()) return;
        String told = (begun.isPresent() ? "the rest of " : "") + plan.subject().title() + " for "
                + request.house().name() + ": " + faults;
        if (PlansJudged.listening()) BAD.add(told);
        else throw new AssertionError(told);
    }

    /** What was wrong since last asked. */
    static List<String> drained() {
        Set<String> bad = new LinkedHashSet<>();
        for (String one = BAD.poll(); one != null; one = BAD.poll()) bad.add(one);
        return List.copyOf(bad);
    }

    static long seen() {
        return SEEN.get();
    }
}
