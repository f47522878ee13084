package piecewright.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the word somebody probably meant. */
final class Nearest {
    private Nearest() {}

    /** The word at the smallest edit distance, if it is near enough to be a slip of the fingers. */
    static Optional<String> to(String typed, Collection<String> words) {
        if (typed.length() > 60) return Optional.empty();
        return words.stream()
                .min(Comparator.<String>comparingInt(word -> distance(typed, word))
                        .thenComparing(word -> word))
                .filter(word -> distance(typed, word) <= Math.max(2, word.length() / 3));
    }

    /** A clause that suggests, or lists what there is. */
    static String hint(String typed, Collection<String> words) {
        return to(typed, words)
                .map(word -> "did you mean \"" + word + "\"?")
                .orElseGet(() -> "known here: " + String.join(", ", words));
    }

    private static int distance(String typed, String word) {
        String a = typed.toLowerCase(Locale.ROOT);
        String b = word.toLowerCase(Locale.ROOT);
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) row[j] = j;
        for (int i = 1; i <= a.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int above = row[j];
                int changed = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                row[j] = Math.min(changed, 1 + Math.min(above, row[j - 1]));
                diagonal = above;
            }
        }
        return row[b.length()];
    }
}
