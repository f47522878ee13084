package piecewright.text;

import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/**
 * One unit with the ways to write it.
 *
 * @param family units of one non-empty family may stand in a row, larger rank first: 6 lb 15 oz
 * @param toInside from a figure in this unit to the unit used inside
 * @param spellings lower case
 */
record UnitSpelling(String family, int rank, DoubleUnaryOperator toInside, List<String> spellings) {
    static UnitSpelling unit(String family, int rank, DoubleUnaryOperator toInside, String... spellings) {
        return new UnitSpelling(family, rank, toInside, List.of(spellings));
    }

    /** Length of the longest spelling that starts at this place and ends a word; 0 if none. */
    int matchAt(String text, int from) {
        String lower = text.substring(from).toLowerCase(Locale.ROOT);
        return spellings.stream()
                .filter(lower::startsWith)
                .filter(spelling -> lower.length() == spelling.length()
                        || !Character.isLetterOrDigit(lower.charAt(spelling.length()))
                        || Character.isDigit(lower.charAt(spelling.length()))
                                && Character.isLetter(spelling.charAt(spelling.length() - 1)))
                .mapToInt(String::length)
                .max()
                .orElse(0);
    }

    /** Whether a part in the other unit may follow a part in this one. */
    boolean mayBeFollowedBy(UnitSpelling next) {
        return !family.isEmpty() && family.equals(next.family) && next.rank < rank;
    }
}
