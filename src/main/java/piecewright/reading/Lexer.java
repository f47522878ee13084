package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import piecewright.reading.Token.Kind;

/** Cuts a line into words, figures and marks. */
final class Lexer {
    private static final String HALVES = "½¼¾⅓⅔";

    private final String line;
    private final List<Token> tokens = new ArrayList<>();
    private int at;

    private Lexer(String line) {
        this.line = line;
    }

    /** Of a line whose digits and blanks are plain. */
    static List<Token> tokens(String line) {
        Lexer lexer = new Lexer(line);
        while (lexer.at < line.length()) lexer.next();
        return List.copyOf(lexer.tokens);
    }

    private void next() {
        char sign = line.charAt(at);
        if (sign == ' ') at++;
        else if (digit(at)) add(Kind.FIGURE, figureEnd());
        else if (HALVES.indexOf(sign) >= 0) add(Kind.FIGURE, at + 1);
        else if (letter(at)) add(Kind.WORD, wordEnd());
        else add(Kind.MARK, at + 1);
    }

    private void add(Kind kind, int until) {
        boolean glued = at > 0 && line.charAt(at - 1) != ' ';
        String text = line.substring(at, until).toLowerCase(Locale.ROOT).replace('’', '\'');
        tokens.add(new Token(kind, text, at, until, glued));
        at = until;
    }

    private boolean digit(int index) {
        return index < line.length() && line.charAt(index) >= '0' && line.charAt(index) <= '9';
    }

    private boolean letter(int index) {
        return index < line.length()
                && (Character.isLetter(line.charAt(index)) || Character.isSurrogate(line.charAt(index)));
    }

    /** Digits, with a point, comma, colon or apostrophe between digits; behind a colon only another colon. */
    private int figureEnd() {
        int end = at;
        char first = 0;
        while (true) {
            while (digit(end)) end++;
            char sign = end < line.length() ? line.charAt(end) : ' ';
            boolean joins = ".,:'’".indexOf(sign) >= 0 && digit(end + 1);
            if (!joins || first == ':' && sign != ':' || first != 0 && first != ':' && sign == ':') return end;
            if (first == 0) first = sign;
            end++;
        }
    }

    private int wordEnd() {
        int end = at;
        while (letter(end)
                || end > at && "'’".indexOf(line.charAt(Math.min(end, line.length() - 1))) >= 0 && letter(end + 1))
            end++;
        return end;
    }
}
