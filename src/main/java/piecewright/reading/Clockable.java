package piecewright.reading;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Half;
import piecewright.reading.Piece.Mark;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;

/** Figures that may be clocks: "8.05", "2140", "9 15", "soaked 8". Beside a clock that is told as one none of them is. */
final class Clockable {
    private final Oracle oracle;
    private final Locale locale;
    private final Draft draft;

    Clockable(Oracle oracle, Locale locale, Draft draft) {
        this.oracle = oracle;
        this.locale = locale;
        this.draft = draft;
    }

    /** The pieces with one of them, or none, taken for a clock. */
    List<Piece> chosen(List<Piece> given, boolean acted) {
        List<Piece> pieces = new HourOrWeight(oracle, locale, draft).chosen(joined(given), acted);
        boolean told = pieces.stream()
                .anyMatch(piece -> piece instanceof Time time
                        && (time.told() instanceof Told.Clock
                                || time.told() instanceof Told.Clocks
                                || time.told() instanceof Told.Ago
                                || time.told() instanceof Told.Bad));
        if (told || !acted) return pieces;
        List<Integer> places = new ArrayList<>();
        for (int at = 0; at < pieces.size(); at++) {
            if (pieces.get(at) instanceof Figure figure && clock(figure).isPresent() && !placed(pieces, at))
                places.add(at);
        }
        int pick = oracle.pick(places.size() + 1 + lengths(pieces, places));
        if (pick == 0) return pieces;
        List<Piece> changed = new ArrayList<>(pieces);
        if (pick > places.size()) {
            Figure hours = (Figure) pieces.get(places.get(0));
            changed.set(
                    places.get(0),
                    new Time(
                            new Told.Ago(java.time.Duration.ofMinutes(Math.round(hours.value() * 60)), false),
                            hours.from(),
                            hours.until()));
            draft.doubt("ask.of-what", hours.digits());
            return changed;
        }
        Figure figure = (Figure) pieces.get(places.get(pick - 1));
        changed.set(places.get(pick - 1), new Time(clock(figure).orElseThrow(), figure.from(), figure.until()));
        return changed;
    }

    /** "soaked 8" may also be eight hours long. */
    private static int lengths(List<Piece> pieces, List<Integer> places) {
        if (places.size() != 1) return 0;
        boolean soaked = pieces.stream()
                .anyMatch(piece -> piece instanceof Term term && term.keys().contains("act.soak.did"));
        Figure figure = (Figure) pieces.get(places.get(0));
        return soaked && figure.whole() && figure.value() <= 24 && figure.value() >= 2 ? 1 : 0;
    }

    /** A figure that belongs to the word beside it. */
    private static boolean placed(List<Piece> pieces, int at) {
        for (int next = at - 1; next >= 0; next--) {
            Piece piece = pieces.get(next);
            if (piece instanceof Term term
                    && FiguresTold.key(term)
                            .filter(key -> !key.equals("topic.weight") || true)
                            .isPresent()
                    && term.of("act.").isEmpty()) return true;
            boolean set = piece instanceof Term term && (term.is("set") || term.is("gasmark"));
            if (set) return true;
            boolean bare = piece instanceof Term term
                    && term.keys().stream().anyMatch(key -> key.startsWith("act.") && key.endsWith(".bare"))
                    && next == at - 1;
            if (bare) return true;
            boolean watered = piece instanceof Term term
                    && term.of("act.sprinkle").isPresent()
                    && ((Figure) pieces.get(at)).whole();
            if (watered) return true;
            if (!(piece instanceof Term term && term.empty())) break;
        }
        return at + 1 < pieces.size()
                && pieces.get(at + 1) instanceof Term after
                && (FiguresTold.key(after).isPresent()
                        || after.is("deed")
                        || after.is("vessel.noun")
                        || after.is("something"));
    }

    /** The clock a bare figure can be. */
    private Optional<Told.Clock> clock(Figure figure) {
        return clock(figure, locale);
    }

    static Optional<Told.Clock> clock(Figure figure, Locale locale) {
        boolean plain =
                figure.unit().isEmpty() && !figure.spelled() && figure.high().isEmpty() && figure.parts() == 1;
        if (!plain) return Optional.empty();
        String digits = figure.digits();
        if (digits.matches("\\d{1,2}\\.[0-5]\\d") && !ClockWords.unitedStates(locale)) {
            String[] parts = digits.split("\\.");
            return told(parts[0], Integer.parseInt(parts[1]));
        }
        if (digits.matches("(1\\d|2[0-3])[0-5]\\d"))
            return Optional.of(new Told.Clock(
                    Integer.parseInt(digits.substring(0, 2)),
                    Integer.parseInt(digits.substring(2)),
                    Half.FIXED,
                    Optional.empty()));
        if (digits.matches("[1-9][0-5]\\d") && digits.length() == 3)
            return told(digits.substring(0, 1), Integer.parseInt(digits.substring(1)));
        return digits.matches("\\d{1,2}") ? told(digits, 0) : Optional.empty();
    }

    private static Optional<Told.Clock> told(String hours, int minute) {
        int hour = Integer.parseInt(hours);
        if (hour > 23) return Optional.empty();
        boolean fixed = hours.length() == 2 && hour < 10 || hour > 12 || hour == 0;
        return Optional.of(new Told.Clock(hour, minute, fixed ? Half.FIXED : Half.EITHER, Optional.empty()));
    }

    /** "9 15": a blank for the colon or the point; "7.7 2 kg": a slipped blank. */
    private List<Piece> joined(List<Piece> pieces) {
        for (int at = 0; at + 1 < pieces.size(); at++) {
            if (!(pieces.get(at) instanceof Figure first) || !(pieces.get(at + 1) instanceof Figure second)) continue;
            boolean plain = first.unit().isEmpty()
                    && !first.spelled()
                    && !second.spelled()
                    && first.high().isEmpty()
                    && second.high().isEmpty();
            if (!plain) continue;
            boolean slipped = first.digits().matches("\\d+[.,]\\d+")
                    && second.digits().matches("\\d{1,2}")
                    && second.unit().filter(UnitSizes::mass).isPresent();
            boolean blank = first.digits().matches("\\d{1,2}")
                    && second.digits().matches("\\d{2}")
                    && second.unit().isEmpty();
            if (!slipped && !blank) continue;
            List<Piece> changed = new ArrayList<>(pieces);
            changed.remove(at + 1);
            if (slipped) {
                draft.doubt("ask.slipped-blank", first.digits() + " " + second.digits());
                String text = oracle.pick(2) == 0 ? first.digits() + second.digits() : first.digits();
                changed.set(at, figure(text.replace(',', '.'), second.unit(), first.from(), second.until()));
                return changed;
            }
            draft.doubt("ask.slipped-blank", first.digits() + " " + second.digits());
            int pick = oracle.pick(2);
            boolean time = pick == 0 && Integer.parseInt(second.digits()) < 60;
            if (time)
                changed.set(
                        at,
                        new Time(
                                told(first.digits(), Integer.parseInt(second.digits()))
                                        .map(Told.class::cast)
                                        .orElse(new Told.Vague()),
                                first.from(),
                                second.until()));
            else
                changed.set(
                        at,
                        figure(
                                first.digits() + "." + second.digits(),
                                Optional.of(draft.scene.metric() ? "kg" : "lb"),
                                first.from(),
                                second.until()));
            return changed;
        }
        return pieces;
    }

    static Figure figure(String digits, Optional<String> unit, int from, int until) {
        return new Figure(
                List.of(Double.parseDouble(digits)), digits, unit, OptionalDouble.empty(), 1, false, from, until);
    }

    static boolean mark(Piece piece) {
        return piece instanceof Mark;
    }
}
