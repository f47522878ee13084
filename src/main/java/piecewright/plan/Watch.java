package piecewright.plan;

import java.util.concurrent.CancellationException;

/** Whoever waits for a plan: hears that it is still being looked for, and may say that it is not wanted any more. */
@FunctionalInterface
public interface Watch {
    /** Called every few milliseconds of a search, by any of its threads; throws CancellationException to end it at once. */
    void looking() throws CancellationException;

    /** A search begins, and what it works with is tabulated first. */
    default void beginning() throws CancellationException {}

    /** A search is over that looked at so many ways on. */
    default void looked(int ways) {}

    /** Both of them. */
    default Watch and(Watch another) {
        Watch one = this;
        return new Watch() {
            @Override
            public void looking() {
                one.looking();
                another.looking();
            }

            @Override
            public void beginning() {
                one.beginning();
                another.beginning();
            }

            @Override
            public void looked(int ways) {
                one.looked(ways);
                another.looked(ways);
            }
        };
    }

    /** Nobody. */
    static Watch none() {
        return () -> {};
    }
}
