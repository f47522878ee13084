package piecewright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What no face may say: words our readers would have to guess, ids, sentences nobody reads to their end. */
public final class PlainWords {
    /** Judgement: longer sentences are read twice. */
    public static final int MOST_WORDS = 25;

    private static final Pattern NEVER = Pattern.compile(
            "(?i)\\b(?:pieces?|corns?|acts|an act|each act|breathed away|carried on|free of harm|hard limit"
                    + "|of 100 ways|would be best|0 fl oz)\\b|(?<![\\w./{\"'-])(?:floor|kiln|couch|steep-\\d)\\.[a-z][a-z-]+");
    private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?])[”)]?\\s+|\\n\\s*\\n|\\n(?=\\s*[-•])");

    private PlainWords() {}

    /** What this text says that it may not, each with a little of what stands around it. */
    public static List<String> banned(String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = NEVER.matcher(text.replaceAll("a piece of|piece by piece", ""));
        while (matcher.find()) {
            int from = Math.max(0, matcher.start() - 30);
            found.add(text.substring(from, Math.min(text.length(), matcher.end() + 30))
                    .replace('\n', ' '));
        }
        return found;
    }

    /** On a page filled in: the clauses of more than {@link #MOST_WORDS} words, figures and units not counted. */
    public static List<String> tooLongFilledIn(String page) {
        List<String> found = new ArrayList<>();
        for (String clause : page.split("[.!?;:,][”)]?\\s+|\\n\\s*\\n|\\n(?=\\s*[-•])|(?<=[A-Z]{3})\\n")) {
            long words = Pattern.compile("(?<!\\S)[“\"(]?\\p{L}{2,}\\S*")
                    .matcher(clause)
                    .results()
                    .count();
            if (words > MOST_WORDS) found.add(words + ": " + clause.strip());
        }
        return found;
    }

    /** The sentences of more than {@link #MOST_WORDS} words. */
    public static List<String> tooLong(String text) {
        List<String> found = new ArrayList<>();
        for (String sentence : SENTENCE.split(text)) {
            long words =
                    Pattern.compile("\\S*\\w\\S*").matcher(sentence).results().count();
            if (words > MOST_WORDS) found.add(words + ": " + sentence.strip());
        }
        return found;
    }
}
