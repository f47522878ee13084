package piecewright.assess;

import java.util.OptionalInt;

/** How far dishes of 100 corns of one lot may lie apart before the test must be repeated. */
public final class ReplicateTolerance {
    private static final int LOWEST_MEAN = 75;

    /** Source: 7 CFR 201.55, four dishes; means of 75 to 99 %. Judgement: 76, 78 and 79 filled in by its formula. */
    private static final int[] FOUR = {
        17, 17, 17, 17, 16, 16, 15, 15, 15, 14, 14, 14, 13, 13, 12, 12, 11, 11, 10, 10, 9, 8, 7, 6, 5
    };
    /** Source: 7 CFR 201.55, two dishes; means of 75 to 97 %. Judgement: 76, 78 and 79 the lower neighbour. */
    private static final int[] TWO = {14, 13, 13, 13, 13, 13, 12, 12, 12, 11, 11, 11, 11, 10, 10, 9, 9, 9, 8, 8, 7, 6, 6
    };

    private ReplicateTolerance() {}

    /** Greatest range in corns of 100; empty where the table has no figure. Dishes other than 2 or 4 have none. */
    public static OptionalInt corns(double meanFraction, int dishes) {
        int at = (int) Math.round(100 * meanFraction) - LOWEST_MEAN;
        int[] table = dishes == 4 ? FOUR : TWO;
        boolean tabled = (dishes == 2 || dishes == 4) && at >= 0 && at < table.length;
        return tabled ? OptionalInt.of(table[at]) : OptionalInt.empty();
    }
}
