package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import piecewright.reading.Outcome.Refused;
import piecewright.text.DecimalReader;
import piecewright.text.Phrases;

/**
 * Reads one typed line: "drained 5.56 kg 21:40 yesterday", "43 in the middle, 41 bottom", "quarter to ten, water off",
 * "sorry, 7.65 not 7.70", "undo". Every reading it can have is tried; what cannot be is dropped; one that is left is kept,
 * several are asked, none is refused. Pure.
 */
public final class LineReader {
    /** Judgement: a line longer than this tells a story; it is kept whole as a note. Characters. */
    private static final int STORY = 400;
    /** Judgement: no note is longer, characters. */
    public static final int LONGEST = 100_000;

    private LineReader() {}

    public static Outcome read(String typed, Scene scene) {
        String line = DecimalReader.plain(typed)
                .codePoints()
                .filter(point -> Character.getType(point) != Character.CONTROL)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
                .toString()
                .strip();
        if (line.isEmpty()) return new Refused(Phrases.say("line.empty"));
        if (line.length() > LONGEST) {
            return new Refused(Phrases.say("line.too-long", String.valueOf(line.length()), String.valueOf(LONGEST)));
        }
        return new Reading(line, scene).outcome();
    }

    /** What comes of a line that strikes entries; empty for any other. It needs nothing but the journal. */
    public static Optional<Outcome> struck(String typed, Scene scene) {
        String line = DecimalReader.plain(typed).strip();
        if (line.isEmpty() || story(line)) return Optional.empty();
        return new Reading(line, scene).struck();
    }

    /** Whether the line is too long to be searched for figures. */
    static boolean story(String line) {
        return line.length() > STORY;
    }

    /** The tokens of a line with those words left out that only say that whoever types is sure. */
    static List<Token> unsure(List<Token> tokens, Lexicon lexicon) {
        List<Token> left = new ArrayList<>(tokens);
        while (!left.isEmpty() && sure(left, lexicon)) left.remove(0);
        return left;
    }

    private static boolean sure(List<Token> tokens, Lexicon lexicon) {
        var keys = lexicon.at(tokens, 0).keys();
        return keys.contains("really") || keys.contains("again");
    }

    static Optional<String> joined(List<Token> tokens) {
        return tokens.isEmpty()
                ? Optional.empty()
                : Optional.of(tokens.stream().map(Token::text).collect(Collectors.joining(" ")));
    }
}
