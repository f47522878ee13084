package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Goes every way a line can be read: whoever reads asks which way to go, and is run again for each. */
final class Oracle {
    /** Judgement: a line with more ways than these is no line of a person. */
    private static final int MOST_WAYS = 200;

    private final List<Integer> chosen = new ArrayList<>();
    private final List<Integer> open = new ArrayList<>();
    private int step;

    private Oracle() {}

    /** Whether every way was gone. */
    static boolean every(Consumer<Oracle> way) {
        Oracle oracle = new Oracle();
        for (int ways = 0; ways < MOST_WAYS; ways++) {
            oracle.step = 0;
            way.accept(oracle);
            if (!oracle.next()) return true;
        }
        return false;
    }

    /** Which of so many ways to go, from 0. */
    int pick(int ways) {
        if (ways < 1) throw new IllegalArgumentException("ways must be 1 or more: " + ways);
        if (step == chosen.size()) {
            chosen.add(0);
            open.add(ways);
        }
        return chosen.get(step++);
    }

    <T> T pick(List<T> ways) {
        return ways.get(pick(ways.size()));
    }

    private boolean next() {
        while (chosen.size() > step) drop();
        while (!chosen.isEmpty()) {
            int last = chosen.size() - 1;
            if (chosen.get(last) + 1 < open.get(last)) {
                chosen.set(last, chosen.get(last) + 1);
                return true;
            }
            drop();
        }
        return false;
    }

    private void drop() {
        chosen.remove(chosen.size() - 1);
        open.remove(open.size() - 1);
    }
}
