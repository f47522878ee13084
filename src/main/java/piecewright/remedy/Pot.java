package piecewright.remedy;

import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import piecewright.plan.Watch;

/** What trying one kind of change may cost: so many looks of its searches, then no more of it are tried. */
final class Pot implements Watch {
    /** Judgement: measured; under a second of CPU for all kinds together, some fifteen steps that fail. */
    private static final int MOST_LOOKS = 1100;
    /** Judgement: measured; to tabulate what a search works with takes as long as so many looks. */
    private static final int LOOKS_PER_SEARCH = 40;

    private final AtomicInteger left;

    /** The share of one of so many kinds. */
    Pot(int kinds) {
        this.left = new AtomicInteger(MOST_LOOKS / kinds);
    }

    @Override
    public void beginning() {
        takes(LOOKS_PER_SEARCH);
    }

    @Override
    public void looking() {
        takes(1);
    }

    private void takes(int looks) {
        if (left.addAndGet(-looks) < 0) throw new CancellationException("enough of this kind was tried");
    }

    boolean isEmpty() {
        return left.get() < 0;
    }
}
