package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Mark;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Unknown;

/** Cuts the tokens of a line into pieces that stand for one thing each. Scratch space of one reading. */
final class PieceReader {
    private static final Set<String> COUNTED =
            Set.of("topic.vents", "topic.fan", "topic.acrospire", "topic.corns", "chit", "topic.rootlets");

    private final Tokens tokens;
    private final TimeWords times;
    private final FigureWords figures;
    private final List<Piece> pieces = new ArrayList<>();
    private final Optional<String> slipMeans;
    private final List<String> places;

    /**
     * @param slipMeans the family of keys a mistyped word is held to be of, such as "act.drain."
     * @param places names of the rooms of the house
     */
    PieceReader(Tokens tokens, TimeWords times, Optional<String> slipMeans, List<String> places) {
        this.places = places;
        this.tokens = tokens;
        this.times = times;
        this.figures = new FigureWords(tokens);
        this.slipMeans = slipMeans;
    }

    List<Piece> pieces() {
        int at = 0;
        while (at < tokens.size()) {
            Piece next = next(at);
            pieces.add(next);
            at = next.until();
        }
        return Sums.summed(pieces);
    }

    private Piece next(int at) {
        boolean placed = placed();
        Optional<Piece> parted = figures.parted(at);
        if (parted.isPresent()) return parted.get();
        Optional<Time> time = placed && bareAt(at) ? Optional.empty() : times.at(at, ratioNear(at));
        Lexicon.Found found = tokens.lexicon().at(tokens.list(), at);
        if (besides(found, at)) {
            Term aside = term(found, at);
            return new Unknown(aside.text(), at, aside.until());
        }
        boolean longer = found.until() - at >= 2
                && (time.isEmpty() || found.until() > time.get().until());
        if (longer && meaning(found)) return term(found, at);
        if (time.isPresent()) return time.get();
        Optional<Piece> figure = figures.at(at, last());
        if (figure.isPresent()) return figure.get();
        if (!found.keys().isEmpty()) return term(found, at);
        Token token = tokens.get(at);
        if (token.word() && places.stream().anyMatch(place -> place.equalsIgnoreCase(token.text()))) {
            return new Term(Set.of("spot.air"), token.text(), false, at, at + 1);
        }
        if (token.text().endsWith("'s")
                && tokens.lexicon().knows(token.text().substring(0, token.text().length() - 2))) {
            Token base = new Token(
                    token.kind(),
                    token.text().substring(0, token.text().length() - 2),
                    token.from(),
                    token.to(),
                    token.glued());
            Set<String> keys = tokens.lexicon().at(List.of(base), 0).keys();
            if (!keys.isEmpty()) return new Term(keys, base.text(), false, at, at + 1);
        }
        if (token.kind() == Token.Kind.MARK) return new Mark(token.text(), at, at + 1);
        return slipped(token, at);
    }

    /** "9 kg before sprinkling": a step that only says when. */
    private boolean besides(Lexicon.Found found, int at) {
        boolean going = found.keys().stream().anyMatch(key -> key.startsWith("act.") && key.endsWith(".ing"));
        return going && at > 0 && tokens.has(at - 1, "relation");
    }

    private static boolean meaning(Lexicon.Found found) {
        return found.keys().stream().anyMatch(key -> !key.equals("filler") && !key.equals("skip"));
    }

    private Term term(Lexicon.Found found, int at) {
        StringBuilder text = new StringBuilder();
        for (int each = at; each < found.until(); each++) {
            text.append(each > at && !tokens.get(each).glued() ? " " : "")
                    .append(tokens.get(each).text());
        }
        return new Term(found.keys(), text.toString(), false, at, found.until());
    }

    private Piece slipped(Token token, int at) {
        Set<String> near = tokens.lexicon().near(token.text());
        List<String> acts = near.stream().map(PieceReader::family).distinct().toList();
        Optional<String> meant = slipMeans
                .filter(acts::contains)
                .or(() -> acts.size() == 1 ? Optional.of(acts.get(0)) : Optional.empty());
        if (meant.isEmpty()) return new Unknown(token.text(), at, at + 1);
        Set<String> keys = new java.util.LinkedHashSet<>(near);
        keys.removeIf(key -> !family(key).equals(meant.get()));
        return new Term(keys, token.text(), true, at, at + 1);
    }

    private static String family(String key) {
        return key.substring(0, key.lastIndexOf('.') + 1);
    }

    private Optional<Piece> last() {
        return pieces.isEmpty() ? Optional.empty() : Optional.of(pieces.get(pieces.size() - 1));
    }

    /** Whether a place or heater was named just now, whose "at 43" is no hour. */
    private boolean placed() {
        return last().filter(piece -> piece instanceof Term term
                        && term.keys().stream()
                                .anyMatch(key -> key.startsWith("spot.")
                                        || key.startsWith("topic.")
                                        || key.equals("set")
                                        || key.equals("reads")))
                .isPresent();
    }

    private boolean bareAt(int at) {
        return tokens.has(at, "at")
                && at + 1 < tokens.size()
                && tokens.get(at + 1).figure()
                && tokens.get(at + 1).text().matches("\\d{1,3}([.,]\\d)?")
                && !tokens.is(at + 2, "am", "pm", "a", "p", "uhr", "o'clock", "h")
                && !times.at(at, true)
                        .filter(time -> time.told() instanceof Piece.Told.Ago || time.told() instanceof Piece.Told.Into)
                        .isPresent();
    }

    private boolean ratioNear(int at) {
        boolean before = pieces.stream()
                .anyMatch(piece ->
                        piece instanceof Term term && term.keys().stream().anyMatch(COUNTED::contains));
        if (before) return true;
        for (int next = at + 1; next < Math.min(tokens.size(), at + 6); next++) {
            if (tokens.has(next, "chit")
                    || tokens.has(next, "vent.open") && tokens.get(next).word()) return true;
        }
        return false;
    }

    /** Weights in parts and sums written out: "7.0 + 7.6 lb", "3.92 kg and 3.8 kg" in two goes, "9.56 - 1.84 = 7.72 kg". */
    private static final class Sums {
        private Sums() {}

        static List<Piece> summed(List<Piece> pieces) {
            boolean parts = pieces.stream().anyMatch(piece -> piece instanceof Term term && term.is("parts"));
            List<Piece> done = new ArrayList<>();
            for (int at = 0; at < pieces.size(); at++) {
                Piece piece = pieces.get(at);
                int result = result(pieces, at);
                if (result > at) {
                    done.add(pieces.get(result));
                    at = result;
                    continue;
                }
                int next = at + 1;
                while (piece instanceof Figure figure && joins(pieces, next, parts)) {
                    int second = pieces.get(next) instanceof Mark mark
                                    && mark.sign().equals(",")
                                    && another(pieces, next + 1)
                            ? next + 2
                            : next + 1;
                    Optional<Figure> sum = sum(figure, (Figure) pieces.get(second));
                    if (sum.isEmpty()) break;
                    piece = sum.get();
                    next = second + 1;
                    at = second;
                }
                done.add(piece);
            }
            return done;
        }

        /** Where the result of a difference or sum stands that is written out; the same place if there is none. */
        private static int result(List<Piece> pieces, int at) {
            boolean shaped = at + 4 < pieces.size()
                    && pieces.get(at) instanceof Figure
                    && mark(pieces, at + 1, "-", "+", "–")
                    && pieces.get(at + 2) instanceof Figure
                    && mark(pieces, at + 3, "=")
                    && pieces.get(at + 4) instanceof Figure;
            return shaped ? at + 4 : at;
        }

        private static boolean mark(List<Piece> pieces, int at, String... any) {
            return at < pieces.size()
                    && pieces.get(at) instanceof Mark mark
                    && List.of(any).contains(mark.sign());
        }

        private static boolean another(List<Piece> pieces, int at) {
            return at + 1 < pieces.size()
                    && pieces.get(at) instanceof Term term
                    && term.is("plus")
                    && pieces.get(at + 1) instanceof Figure;
        }

        private static boolean joins(List<Piece> pieces, int at, boolean parts) {
            if (at + 1 >= pieces.size()) return false;
            if (mark(pieces, at, "+")) return pieces.get(at + 1) instanceof Figure;
            boolean comma = mark(pieces, at, ",");
            boolean and = pieces.get(at) instanceof Term term
                    && term.is("plus")
                    && (parts || term.text().equals("plus"));
            if (comma && parts && another(pieces, at + 1)) return true;
            return (and || comma && parts) && pieces.get(at + 1) instanceof Figure;
        }

        private static Optional<Figure> sum(Figure first, Figure second) {
            Optional<String> unit = second.unit().or(first::unit);
            boolean same = first.unit().isEmpty() || first.unit().equals(unit);
            boolean weighs = unit.isEmpty() || List.of("kg", "g", "lb", "oz").contains(unit.get());
            if (!weighs) return Optional.empty();
            if (!same) {
                double factor = UnitSizes.kg(second.unit().orElseThrow())
                        / UnitSizes.kg(first.unit().orElseThrow());
                return Optional.of(first.more(first.value() + second.value() * factor, first.unit(), second.until()));
            }
            return Optional.of(first.more(first.value() + second.value(), unit, second.until()));
        }
    }
}
