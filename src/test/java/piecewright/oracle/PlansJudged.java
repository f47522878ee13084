package piecewright.oracle;

import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.AfterEachCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/**
 * Fails the test in which a plan broke a rule of the oracle, whatever that test does with exceptions. Found by every
 * test class by way of the service files beside it; outside of tests that listen, the witness throws at once.
 */
public final class PlansJudged implements BeforeAllCallback, AfterEachCallback, AfterAllCallback {
    private static final AtomicInteger LISTENING = new AtomicInteger();

    static boolean listening() {
        return LISTENING.get() > 0;
    }

    @Override
    public void beforeAll(ExtensionContext context) {
        LISTENING.incrementAndGet();
    }

    @Override
    public void afterEach(ExtensionContext context) {
        judge();
    }

    @Override
    public void afterAll(ExtensionContext context) {
        LISTENING.decrementAndGet();
        judge();
    }

    private static void judge() {
        List<String> bad = PlanWitnessed.drained();
        if (bad.isEmpty()) return;
        int most = Math.min(5, bad.size());
        throw new AssertionError(bad.size() + " plans break a rule:\n" + String.join("\n", bad.subList(0, most)));
    }
}
