package piecewright.plan;

import java.util.concurrent.CancellationException;

/** Whoever waits for a plan: hears that it is still being looked for, and may say that it is not wanted any more. */
@FunctionalInterface
public interface Watch {
    /** Called every few milliseconds of a search, by any of its threads; throws CancellationException to end it at once. */
    void looking() throws CancellationException;

    /** Nobody. */
    static Watch none() {
        return () -> {};
    }
}
