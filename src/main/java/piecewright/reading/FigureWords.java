package piecewright.reading;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Ratio;
import piecewright.reading.Piece.Row;
import piecewright.reading.Piece.Term;

/** Figures with their units, ranges, ratios and rows of figures. */
final class FigureWords {
    private static final List<String> DEPTHS = List.of("deep", "thick", "depth", "high", "bed");

    private final Tokens tokens;

    FigureWords(Tokens tokens) {
        this.tokens = tokens;
    }

    Optional<Piece> at(int from, Optional<Piece> before) {
        Token token = tokens.get(from);
        boolean minus = token.is("-")
                && from + 1 < tokens.size()
                && tokens.get(from + 1).figure()
                && tokens.get(from + 1).glued();
        boolean negative = minus && (from == 0 || !token.glued());
        if (negative)
            return plain(from + 1, before)
                    .map(figure -> new Figure(
                            List.of(-figure.value()),
                            "-" + figure.digits(),
                            figure.unit(),
                            OptionalDouble.empty(),
                            1,
                            false,
                            from,
                            figure.until()));
        if (token.is("between")) return between(from);
        boolean article = token.is("a") || token.is("an");
        if (article && from + 1 < tokens.size()) return amount(from);
        if (!token.figure() && tokens.numerals().spelled(tokens.list(), from).isEmpty()) return Optional.empty();
        Optional<Piece> many = many(from);
        return many.isPresent() ? many : plain(from, before).map(figure -> ranged(figure, before));
    }

    /** "a pint". */
    private Optional<Piece> amount(int from) {
        return unit(from + 1, Optional.empty())
                .filter(unit -> List.of("pint", "cup", "quart", "gal", "l").contains(unit.name()))
                .map(unit -> new Figure(
                        List.of(1.0),
                        "1",
                        Optional.of(unit.name()),
                        OptionalDouble.empty(),
                        1,
                        true,
                        from,
                        unit.until()));
    }

    /** Weights and volumes, of which parts are told: "half a litre", "12 and three quarter pounds", "12 3/4 lb". */
    private static final Set<String> PARTED = Set.of("kg", "lb", "oz", "l", "gal", "pint", "quart", "cup");

    private static final Map<String, Double> SHARES = Map.of(
            "share.quarter", 1 / 4.0,
            "share.third", 1 / 3.0,
            "share.half", 1 / 2.0,
            "share.two-thirds", 2 / 3.0,
            "share.three-quarters", 3 / 4.0);

    /** Weights and volumes told in shares, before anything else is made of them. */
    Optional<Piece> parted(int from) {
        Optional<Piece> part = share(from, 0, from);
        return part.isPresent()
                ? part
                : tokens.whole(from)
                        .filter(whole -> whole.value() >= 1)
                        .flatMap(whole -> share(from, whole.value(), whole.until()));
    }

    /** A share of a unit, on top of a whole number told before it. */
    private Optional<Piece> share(int from, double whole, int at) {
        int begin = whole > 0 && tokens.is(at, "and") ? at + 1 : at;
        if (begin >= tokens.size()) return Optional.empty();
        double share = 0;
        int until = begin;
        boolean written = begin + 2 < tokens.size()
                && tokens.get(begin).text().matches("[1-7]")
                && tokens.is(begin + 1, "/")
                && tokens.get(begin + 1).glued()
                && tokens.get(begin + 2).text().matches("[23468]");
        if (written) {
            share = Double.parseDouble(tokens.get(begin).text())
                    / Double.parseDouble(tokens.get(begin + 2).text());
            until = begin + 3;
        }
        for (int start : new int[] {begin, tokens.skipped(begin)}) {
            if (share > 0 || start >= tokens.size()) continue;
            Lexicon.Found found = tokens.lexicon().at(tokens.list(), start);
            for (String key : found.keys()) share = Math.max(share, SHARES.getOrDefault(key, 0.0));
            until = found.until();
        }
        if (!(share > 0 && share < 1)) return Optional.empty();
        int next = tokens.skipped(tokens.is(until, "of") ? until + 1 : until);
        double value = whole + share;
        return unit(next, Optional.empty())
                .filter(unit -> PARTED.contains(unit.name()))
                .map(unit -> new Figure(
                        List.of(value),
                        String.valueOf(value),
                        Optional.of(unit.name()),
                        OptionalDouble.empty(),
                        1,
                        true,
                        from,
                        unit.until()));
    }

    private record Unit(String name, int until) {}

    private Optional<Unit> unit(int at, Optional<Piece> before) {
        if (at >= tokens.size()) return Optional.empty();
        Lexicon.Found found = tokens.lexicon().at(tokens.list(), at);
        Optional<String> name = found.keys().stream()
                .filter(key -> key.startsWith("unit."))
                .map(key -> key.substring(5))
                .sorted()
                .findFirst();
        if (name.isEmpty()) return Optional.empty();
        boolean inch = tokens.is(at, "in");
        boolean deep = DEPTHS.stream().anyMatch(word -> tokens.is(found.until(), word));
        boolean bedded = before.filter(piece -> piece instanceof Term term
                        && (term.is("topic.bed")
                                || term.is("topic.depth")
                                || term.of("act.floor").isPresent()))
                .isPresent();
        if (inch && !deep && !bedded) return Optional.empty();
        boolean hash = tokens.is(at, "#") && !tokens.get(at).glued();
        return hash ? Optional.empty() : Optional.of(new Unit(name.get(), found.until()));
    }

    private Optional<Figure> plain(int from, Optional<Piece> before) {
        Token token = tokens.get(from);
        List<Double> values;
        int until = from + 1;
        boolean spelled = !token.figure();
        if (spelled) {
            Numerals.Spelled number =
                    tokens.numerals().spelled(tokens.list(), from).orElse(null);
            if (number == null) return Optional.empty();
            values = List.of(number.value());
            until = number.until();
        } else {
            values = tokens.numerals().values(token.text());
        }
        if (values.isEmpty()) return Optional.empty();
        String digits = spelled ? String.valueOf(values.get(0)).replaceAll("\\.0$", "") : token.text();
        Figure figure = new Figure(values, digits, Optional.empty(), OptionalDouble.empty(), 1, spelled, from, until);
        Optional<Unit> unit = unit(until, before);
        return Optional.of(
                unit.isPresent()
                        ? withSmaller(figure.with(unit.get().name(), unit.get().until()))
                        : figure);
    }

    /** "12 lb 14 oz", "12lb14", "12 lb 14" and nothing after it, "9 kg 130". */
    private Figure withSmaller(Figure figure) {
        boolean big = figure.unit("kg", "lb");
        if (!big || figure.until() >= tokens.size()) return figure;
        int at = tokens.is(figure.until(), "and") ? figure.until() + 1 : figure.until();
        if (at >= tokens.size() || !tokens.get(at).figure()) return figure;
        List<Double> more = tokens.numerals().values(tokens.get(at).text());
        if (more.isEmpty()) return figure;
        Optional<Unit> unit = unit(at + 1, Optional.empty());
        boolean pounds = figure.unit("lb");
        String small = pounds ? "oz" : "g";
        double perWhole = pounds ? 16 : 1000;
        boolean named = unit.isPresent() && unit.get().name().equals(small);
        boolean bare = unit.isEmpty() && more.get(0) == Math.rint(more.get(0));
        boolean whole = figure.whole();
        boolean fits = more.get(0) < perWhole
                && (named
                        || bare
                                && (tokens.get(at).glued()
                                        || pounds && whole && ends(at + 1)
                                        || !pounds && tokens.get(at).text().length() == 3));
        if (!fits) return figure;
        return figure.worth(
                figure.value() + more.get(0) / perWhole, named ? unit.get().until() : at + 1);
    }

    /** Whether a figure before this place stands alone: nothing follows that could make an hour or a count of it. */
    private boolean ends(int at) {
        return at >= tokens.size() || tokens.is(at, ",", ";");
    }

    /** "between 7.7 and 7.8 kg". */
    private Optional<Piece> between(int from) {
        Optional<Figure> low = from + 1 < tokens.size() ? plain(from + 1, Optional.empty()) : Optional.empty();
        if (low.isEmpty() || !tokens.is(low.get().until(), "and")) return Optional.empty();
        int next = low.get().until() + 1;
        Optional<Figure> high = next < tokens.size() ? plain(next, Optional.empty()) : Optional.empty();
        return high.map(upper -> new Figure(
                low.get().values(),
                low.get().digits(),
                upper.unit().or(() -> low.get().unit()),
                OptionalDouble.of(upper.value()),
                1,
                false,
                from,
                upper.until()));
    }

    /** "7.7-7.8 kg", "40 or 41", "7.7 to 7.8 kg". */
    private Piece ranged(Figure low, Optional<Piece> before) {
        int at = low.until();
        boolean dash =
                (tokens.is(at, "-") || tokens.is(at, "–")) && tokens.get(at).glued();
        boolean to = low.unit().isEmpty() && tokens.is(at, "to", "or") || tokens.is(at, "or");
        if (!dash && !to || at + 1 >= tokens.size() || !tokens.get(at + 1).figure()) return low;
        Optional<Figure> high = plain(at + 1, before);
        boolean near = high.isPresent()
                && high.get().value() > low.value()
                && high.get().value() < low.value() * 1.5;
        if (!near) return low;
        Optional<String> unit = high.get().unit().or(low::unit);
        return new Figure(
                low.values(),
                low.digits(),
                unit,
                OptionalDouble.of(high.get().value()),
                1,
                false,
                low.from(),
                high.get().until());
    }

    /** Ratios and rows. */
    private Optional<Piece> many(int from) {
        Token token = tokens.get(from);
        if (token.figure()
                && token.text().matches("\\d{1,4}(,\\d{1,4}){2,}")
                && tokens.numerals().values(token.text()).isEmpty()) {
            List<Double> row =
                    Arrays.stream(token.text().split(",")).map(Double::valueOf).toList();
            return Optional.of(new Row(row, false, from, from + 1));
        }
        if (token.figure() && tokens.is(from + 1, "/") && tokens.get(from + 1).glued()) return slashed(from);
        Optional<Numerals.Spelled> first = tokens.whole(from);
        if (first.isEmpty()) return Optional.empty();
        int at = first.get().until();
        int of = tokens.is(at, "of", "in") ? at + 1 : tokens.is(at, "out") && tokens.is(at + 1, "of") ? at + 2 : at;
        if (of > at) {
            Optional<Numerals.Spelled> all = tokens.whole(of);
            boolean clean = all.isPresent()
                    && !tokens.is(all.get().until(), ":")
                    && unit(all.get().until(), Optional.empty()).isEmpty();
            if (clean)
                return Optional.of(new Ratio(
                        first.get().value(),
                        all.get().value(),
                        false,
                        from,
                        all.get().until()));
        }
        return token.figure() ? row(from) : Optional.empty();
    }

    private Optional<Piece> slashed(int from) {
        List<Double> values = new ArrayList<>();
        int at = from;
        while (at < tokens.size() && tokens.get(at).text().matches("\\d{1,4}([.,]\\d)?")) {
            values.add(tokens.numerals().values(tokens.get(at).text()).get(0));
            at++;
            if (!tokens.is(at, "/") || !tokens.get(at).glued()) break;
            at++;
        }
        if (values.size() < 2) return Optional.empty();
        if (values.size() == 2) return Optional.of(new Ratio(values.get(0), values.get(1), true, from, at));
        return Optional.of(new Row(values, true, from, at));
    }

    /** Three whole figures or more, with blanks or commas between. */
    private Optional<Piece> row(int from) {
        List<Double> values = new ArrayList<>();
        int at = from;
        int end = from;
        while (at < tokens.size()
                && tokens.get(at).text().matches("\\d{1,4}")
                && unit(at + 1, Optional.empty()).isEmpty()
                && !tokens.is(at + 1, "/", ":", "-")) {
            values.add(Double.valueOf(tokens.get(at).text()));
            end = at + 1;
            at = tokens.is(end, ",") || tokens.is(end, ";") ? end + 1 : end;
        }
        return values.size() >= 3 ? Optional.of(new Row(values, false, from, end)) : Optional.empty();
    }
}
