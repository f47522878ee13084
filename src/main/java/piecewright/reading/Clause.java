package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Mark;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Unknown;

/**
 * The pieces between two commas or the like, with the words they came from.
 *
 * @param text as typed
 * @param words the same without a time before or after it
 */
record Clause(List<Piece> pieces, String text, String words) {
    private static final String ENDS = ",.;:!()–";

    Clause {
        pieces = List.copyOf(pieces);
    }

    static List<Clause> split(List<Piece> pieces, List<Token> tokens, String line) {
        List<Clause> clauses = new ArrayList<>();
        List<Piece> open = new ArrayList<>();
        for (Piece piece : pieces) {
            boolean dash = piece instanceof Mark mark
                    && "-/".contains(mark.sign())
                    && !tokens.get(piece.from()).glued();
            boolean mark = piece instanceof Mark sign && ENDS.contains(sign.sign());
            boolean word = piece instanceof Term term
                    && (term.text().equals("but") || term.text().equals("then"));
            if (dash || mark || word) close(open, clauses, tokens, line);
            else open.add(piece);
        }
        close(open, clauses, tokens, line);
        return clauses;
    }

    private static void close(List<Piece> open, List<Clause> clauses, List<Token> tokens, String line) {
        if (open.isEmpty()) return;
        int from = tokens.get(open.get(0).from()).from();
        int until = tokens.get(open.get(open.size() - 1).until() - 1).to();
        clauses.add(new Clause(open, line.substring(from, until), timeless(open, tokens, line)));
        open.clear();
    }

    private static String timeless(List<Piece> open, List<Token> tokens, String line) {
        int first = 0;
        int last = open.size() - 1;
        while (first < last && open.get(first) instanceof Time) first++;
        while (last > first && open.get(last) instanceof Time) last--;
        int from = tokens.get(open.get(first).from()).from();
        return line.substring(from, tokens.get(open.get(last).until() - 1).to());
    }

    Stream<Term> terms() {
        return pieces.stream().filter(Term.class::isInstance).map(Term.class::cast);
    }

    boolean has(String key) {
        return terms().anyMatch(term -> term.is(key));
    }

    boolean hasFamily(String family) {
        return terms().anyMatch(term -> term.of(family).isPresent());
    }

    Stream<Figure> figures() {
        return pieces.stream().filter(Figure.class::isInstance).map(Figure.class::cast);
    }

    boolean unknown() {
        return pieces.stream().anyMatch(Unknown.class::isInstance);
    }

    /** The piece beside one, words that carry nothing passed over; step −1 or 1. */
    Optional<Piece> beside(int index, int step) {
        for (int at = index + step; at >= 0 && at < pieces.size(); at += step) {
            boolean empty = pieces.get(at) instanceof Term term && term.empty();
            if (!empty) return Optional.of(pieces.get(at));
        }
        return Optional.empty();
    }
}
