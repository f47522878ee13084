package piecewright.plan.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import piecewright.plan.Pace;

/** A search ends after so many ways, always at the same one, and at once when nobody waits any more. */
class PaceTest {
    /** A search with no goal and no end: two ways on from everywhere. */
    private static final class Endless implements Route {
        private int expanded;

        @Override
        public List<Label> starts() {
            return List.of(new Label(0, 0, new Grain(0, 0, 0, 0, 0, 0, 1, 10), 0, 0, null));
        }

        @Override
        public void expand(Label label, Consumer<Label> sink) {
            expanded++;
            for (int way = 1; way <= 2; way++) {
                sink.accept(new Label(0, 2 * label.at() + way, label.grain(), label.costMinutes() + way, 0, label));
            }
        }

        @Override
        public boolean isGoal(Label label) {
            return false;
        }

        @Override
        public double boundMinutes(Label label) {
            return 0;
        }

        @Override
        public long bucket(Label label) {
            return expanded * 4L + label.at() % 4;
        }

        @Override
        public long cell(Label label) {
            return 0;
        }

        @Override
        public Effort effort() {
            return Effort.complete();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 100, 5_000})
    void endsAfterSoManyWays(int ways) {
        AtomicInteger taken = new AtomicInteger();
        List<Label> goals =
                BestFirst.goalsIfAny(new Endless(), 1, label -> taken.incrementAndGet(), pace(ways, () -> {}));
        assertEquals(List.of(), goals);
        assertTrue(taken.get() <= ways, taken + " of " + ways);
    }

    @Test
    void endsAtOnceWhenNobodyWaits() {
        AtomicInteger looks = new AtomicInteger();
        Pace pace = pace(Integer.MAX_VALUE, () -> {
            if (looks.incrementAndGet() == 3) throw new CancellationException("enough");
        });
        assertThrows(CancellationException.class, () -> BestFirst.goalsIfAny(new Endless(), 1, label -> {}, pace));
        assertEquals(3, looks.get());
    }

    private static Pace pace(int ways, piecewright.plan.Watch watch) {
        return new Pace(watch, ways);
    }
}
