package piecewright.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class MissTest {
    private static final Miss MISS = new Miss(0.01, 0.01);

    /** Normal table: 0.6827 within one standard deviation, 0.4772 between the mean and two. */
    @Test
    void theChanceIsTheNormalOne() {
        assertEquals(0.6827, MISS.chance(0), 1e-4);
        assertEquals(0.4772, MISS.chance(0.01), 1e-4);
    }

    @Test
    void theFartherOffTheDearerAndNothingAtTheAim() {
        assertEquals(0, MISS.costMinutes(0));
        for (double off = 0; off < 0.1; off += 0.001) {
            assertTrue(MISS.costMinutes(off + 0.001) > MISS.costMinutes(off), "at " + off);
        }
    }

    @Test
    void aSureMissCostsWhatTheBatchIsWorth() {
        assertEquals(Miss.WORTH_MINUTES * 0.6827, new Miss(0.01, 0.01).costMinutes(0.05), 260);
        assertTrue(new Miss(0.01, 0.001).costMinutes(0.02) > 0.99 * Miss.WORTH_MINUTES);
    }
}
