package piecewright.reading;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The one vocabulary of typed lines: phrases and what they stand for, such as "act.drain.did". English everywhere, and
 * the words of the person's language beside them where there is a file of it. The first phrase of a key is the one the
 * program writes itself.
 */
public final class Lexicon {
    private static final Map<String, Lexicon> BY_LANGUAGE = new ConcurrentHashMap<>();
    private static final String SKIPPED = "skip";

    private final Map<String, List<Phrase>> byFirst = new HashMap<>();
    private final Map<String, String> firstOfKey = new HashMap<>();
    private final Set<String> words = new HashSet<>();
    private final Set<String> skipped = new HashSet<>();

    private record Phrase(List<String> words, String key) {}

    /** A phrase found: what it may stand for, and the token after it. */
    record Found(Set<String> keys, int until) {}

    private Lexicon(String language) {
        take(properties("words_en.properties"));
        if (!language.equals("en")) take(properties("words_" + language + ".properties"));
        byFirst.values()
                .forEach(list -> list.sort(Comparator.comparingInt((Phrase phrase) -> phrase.words.size())
                        .reversed()));
    }

    public static Lexicon of(Locale locale) {
        return BY_LANGUAGE.computeIfAbsent(locale.getLanguage(), Lexicon::new);
    }

    private static Properties properties(String name) {
        Properties properties = new Properties();
        try (InputStream in = Lexicon.class.getResourceAsStream(name)) {
            if (in != null) properties.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
        return properties;
    }

    private void take(Properties properties) {
        for (String key : properties.stringPropertyNames()) {
            for (String phrase : properties.getProperty(key).split("\\|", -1)) {
                String text = phrase.strip();
                if (text.isEmpty()) continue;
                firstOfKey.putIfAbsent(key, text);
                List<String> split = List.of(text.split(" +"));
                if (key.equals(SKIPPED)) skipped.add(text);
                byFirst.computeIfAbsent(split.get(0), first -> new ArrayList<>())
                        .add(new Phrase(split, key));
                words.addAll(split);
            }
        }
    }

    /** The first phrase of a key: how the program itself says it. */
    public String say(String key) {
        String phrase = firstOfKey.get(key);
        if (phrase == null) throw new IllegalArgumentException("no such words: " + key);
        return phrase;
    }

    boolean has(String key) {
        return firstOfKey.containsKey(key);
    }

    /** Whether the word stands anywhere in the vocabulary. */
    boolean knows(String word) {
        return words.contains(word);
    }

    boolean skips(String word) {
        return skipped.contains(word);
    }

    /** The longest phrase that begins at a token; articles and the like may stand between its words. */
    Found at(List<Token> tokens, int from) {
        Set<String> keys = new LinkedHashSet<>();
        int longest = 0;
        int until = from;
        for (Phrase phrase : byFirst.getOrDefault(tokens.get(from).text(), List.of())) {
            if (phrase.words.size() < longest) break;
            int end = end(phrase, tokens, from);
            if (end < 0) continue;
            longest = phrase.words.size();
            until = Math.max(until, end);
            keys.add(phrase.key);
        }
        return new Found(keys, until);
    }

    private int end(Phrase phrase, List<Token> tokens, int from) {
        int at = from;
        for (int word = 0; word < phrase.words.size(); word++) {
            if (word > 0) {
                while (at < tokens.size() && between(tokens.get(at), phrase.words.get(word))) at++;
            }
            if (at >= tokens.size() || !tokens.get(at).is(phrase.words.get(word))) return -1;
            at++;
        }
        return at;
    }

    private boolean between(Token token, String wanted) {
        return !token.is(wanted) && (skipped.contains(token.text()) || token.is("-") && token.glued());
    }

    /** Keys of those single words that are one slip of the fingers away from a word that is not known; often none. */
    Set<String> near(String word) {
        Set<String> keys = new LinkedHashSet<>();
        if (word.length() < 4 || word.indexOf('\'') >= 0 || knows(word)) return keys;
        for (List<Phrase> phrases : byFirst.values()) {
            for (Phrase phrase : phrases) {
                boolean act = phrase.key.startsWith("act.") && phrase.words.size() == 1;
                if (act && Slip.between(word, phrase.words.get(0))) keys.add(phrase.key);
            }
        }
        return keys;
    }

    /** Whether a word is another, mistyped or shortened. */
    private static final class Slip {
        /** Judgement: words as short as this bear one slip, longer ones two. */
        private static final int SHORT = 6;

        private Slip() {}

        static boolean between(String typed, String meant) {
            if (meant.length() < 4 || typed.charAt(0) != meant.charAt(0)) return false;
            if (bare(typed).equals(typed) && typed.equals(bare(meant))) return true;
            return distance(typed, meant) <= (typed.length() <= SHORT ? 1 : 2);
        }

        /** Without its vowels. */
        private static String bare(String word) {
            return word.replaceAll("[aeiou]", "");
        }

        /** Letters left out, put in, wrong or swapped with their neighbour (optimal string alignment). */
        private static int distance(String a, String b) {
            int[][] d = new int[a.length() + 1][b.length() + 1];
            for (int i = 0; i <= a.length(); i++) d[i][0] = i;
            for (int j = 0; j <= b.length(); j++) d[0][j] = j;
            for (int i = 1; i <= a.length(); i++) {
                for (int j = 1; j <= b.length(); j++) {
                    int wrong = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                    d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + wrong);
                    boolean swapped =
                            i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                    if (swapped) d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
            return d[a.length()][b.length()];
        }
    }
}
