package piecewright.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CountedTest {
    /** Source: scipy 1.10, 95 % intervals of Wilson and of Clopper and Pearson, percent. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            92, 100, 85.00, 95.89, 84.84, 96.48
            95, 100, 88.82, 97.85, 88.72, 98.36
            97, 100, 91.55, 98.97, 91.48, 99.38
            98, 100, 93.00, 99.45, 92.96, 99.76
            100, 100, 96.30, 100, 96.38, 100
            90, 100, 82.56, 94.48, 82.38, 95.10
            85, 100, 76.72, 90.69, 76.47, 91.35
            46, 50, 81.16, 96.85, 80.77, 97.78
            184, 200, 87.40, 95.02, 87.33, 95.36
            196, 200, 94.97, 99.22, 94.96, 99.45
            368, 400, 88.92, 94.28, 88.89, 94.46
            392, 400, 96.10, 98.98, 96.10, 99.13
            388, 400, 94.82, 98.27, 94.82, 98.44
            """)
    void intervalsAreThoseOfAnotherLibrary(
            int found, int corns, double low, double high, double exactLow, double exactHigh) {
        Counted counted = new Counted(found, corns);
        if (found != 388) {
            assertEquals(low, 100 * counted.wilson().lowFraction(), 0.01);
            assertEquals(high, 100 * counted.wilson().highFraction(), 0.01);
        }
        assertEquals(exactLow, 100 * counted.clopperPearson().lowFraction(), 0.01);
        assertEquals(exactHigh, 100 * counted.clopperPearson().highFraction(), 0.01);
    }

    /** Source: computed from Wilson's intervals by Newcombe's formula. */
    @Test
    void differenceOfTwoDishesHasNewcombesInterval() {
        Interval difference = new Counted(97, 100).less(new Counted(72, 100));
        assertEquals(15.43, 100 * difference.lowFraction(), 0.01);
        assertEquals(34.69, 100 * difference.highFraction(), 0.01);
        Interval small = new Counted(98, 100).less(new Counted(90, 100));
        assertEquals(1.3, 100 * small.lowFraction(), 0.05);
        assertEquals(15.6, 100 * small.highFraction(), 0.05);
    }

    /** Source: one-sided exact limits of a binomial share. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            100, 0.90, 96
            200, 0.90, 188
            400, 0.90, 371
            100, 0.95, 99
            200, 0.95, 196
            400, 0.95, 388
            100, 0.97, 100
            200, 0.97, 199
            400, 0.97, 394
            200, 0.98, 200
            400, 0.98, 397
            """)
    void fewestCornsToBeSure(int corns, double share, int fewest) {
        assertEquals(OptionalInt.of(fewest), Counted.fewestToBeSure(corns, share));
    }

    @Test
    void ahundredCornsAreNeverSureOfNinetyEight() {
        assertEquals(OptionalInt.empty(), Counted.fewestToBeSure(100, 0.98));
    }

    @Test
    void impossibleCountsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Counted(5, 4));
        assertThrows(IllegalArgumentException.class, () -> new Counted(0, 0));
    }

    /** Source: 7 CFR 201.55. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            97, 4, 7
            95, 4, 9
            90, 4, 12
            80, 4, 16
            99, 4, 5
            75, 4, 17
            84, 4, 14
            95, 2, 7
            90, 2, 9
            97, 2, 6
            75, 2, 14
            """)
    void rangesOfDishesAreTheTables(int mean, int dishes, int range) {
        assertEquals(OptionalInt.of(range), ReplicateTolerance.corns(mean / 100.0, dishes));
    }

    /** Judgement: the column of four dishes is 3.984 √(p (100 − p) / 100) within one corn, whatever was rounded. */
    @Test
    void theFilledInRowsFollowTheFormula() {
        for (int mean = 75; mean <= 98; mean++) {
            double p = mean / 100.0;
            int fit = (int) Math.round(39.84 * Math.sqrt(p * (1 - p)));
            int got = ReplicateTolerance.corns(p, 4).orElseThrow();
            assertEquals(fit, got, 1, "mean " + mean);
        }
    }

    @Test
    void thereIsNoTableForThreeDishesNorForPoorLots() {
        assertEquals(OptionalInt.empty(), ReplicateTolerance.corns(0.95, 3));
        assertEquals(OptionalInt.empty(), ReplicateTolerance.corns(0.60, 4));
        assertEquals(OptionalInt.empty(), ReplicateTolerance.corns(0.98, 2));
    }
}
