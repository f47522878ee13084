package piecewright.remedy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import piecewright.plan.Watch;

/** What trying one kind of change may cost: so many looks of its searches, then no more of it are tried. */
final class Pot implements Watch {
    /** Judgement: measured; a fifth of a second of CPU, one or two steps that fail after a long search. */
    private static final int MOST_LOOKS = 400;

    private final AtomicInteger left = new AtomicInteger(MOST_LOOKS);

    @Override
    public void looking() {
        if (left.decrementAndGet() < 0) throw new CancellationException("enough of this kind was tried");
    }

    boolean isEmpty() {
        return left.get() < 0;
    }
}
