package piecewright.reading;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import piecewright.reading.Piece.Figure;
import piecewright.reading.Piece.Half;
import piecewright.reading.Piece.Term;
import piecewright.reading.Piece.Time;
import piecewright.reading.Piece.Told;

/** A bare figure straight after a weight: "6 kg 3" is 6.3 kg or three o'clock; it is never taken for one of them unasked. */
final class HourOrWeight {
    /** Judgement: an hour so near to now is meant where the figure can be nothing else, minutes. */
    private static final int LATELY_MINUTES = 60;

    private final Oracle oracle;
    private final Locale locale;
    private final Draft draft;

    HourOrWeight(Oracle oracle, Locale locale, Draft draft) {
        this.oracle = oracle;
        this.locale = locale;
        this.draft = draft;
    }

    /** The pieces with such a figure read one way. */
    List<Piece> chosen(List<Piece> pieces, boolean acted) {
        boolean timed = pieces.stream()
                .anyMatch(piece -> piece instanceof Time time
                        && !(time.told() instanceof Told.Day || time.told() instanceof Told.Part));
        for (int at = 0; at + 1 < pieces.size(); at++) {
            boolean pair = pieces.get(at) instanceof Figure first
                    && weighs(first)
                    && pieces.get(at + 1) instanceof Figure second
                    && bare(second)
                    && !owned(pieces, at + 2);
            if (!pair) continue;
            Figure weight = (Figure) pieces.get(at);
            Figure more = (Figure) pieces.get(at + 1);
            Optional<Figure> finer = finer(weight, more);
            Optional<Told.Clock> hour =
                    acted && !timed && !oneUnder(pieces) ? Clockable.clock(more, locale) : Optional.empty();
            return read(pieces, at, finer, hour);
        }
        return pieces;
    }

    private List<Piece> read(List<Piece> pieces, int at, Optional<Figure> finer, Optional<Told.Clock> hour) {
        if (finer.isEmpty() && hour.isEmpty()) return pieces;
        Figure more = (Figure) pieces.get(at + 1);
        boolean plain = finer.isEmpty() && hour.filter(this::lately).isPresent();
        if (!plain) draft.doubt("ask.weight-or-hour", more.digits());
        boolean weight = finer.isPresent() && (hour.isEmpty() || oracle.pick(2) == 0);
        List<Piece> changed = new ArrayList<>(pieces);
        if (weight) {
            changed.set(at, finer.get());
            changed.remove(at + 1);
        } else {
            changed.set(at + 1, new Time(hour.orElseThrow(), more.from(), more.until()));
        }
        return changed;
    }

    private static boolean weighs(Figure figure) {
        boolean unit = figure.unit().filter(UnitSizes::mass).isPresent();
        boolean decimals = figure.unit().isEmpty() && figure.digits().matches("\\d+[.,]\\d+");
        return (unit || decimals) && !figure.spelled() && figure.high().isEmpty() && figure.parts() == 1;
    }

    private static boolean bare(Figure figure) {
        return figure.unit().isEmpty()
                && !figure.spelled()
                && figure.high().isEmpty()
                && figure.digits().matches("\\d{1,2}");
    }

    /** Whether the word at a place says what the figure before it counts. */
    private static boolean owned(List<Piece> pieces, int at) {
        return at < pieces.size()
                && pieces.get(at) instanceof Term after
                && (FiguresTold.key(after).isPresent() || after.is("deed") || after.is("vessel.noun"));
    }

    /** Whether weights in it are parts of one whole. */
    private static boolean oneUnder(List<Piece> pieces) {
        return pieces.stream().anyMatch(piece -> piece instanceof Term term && term.is("parts"));
    }

    /** The weight with the figure as its further decimals; empty where it has enough of them. */
    private Optional<Figure> finer(Figure weight, Figure more) {
        if (weight.unit("g", "oz")) return Optional.empty();
        String digits = weight.digits().replace(',', '.');
        int decimals = digits.indexOf('.') < 0 ? 0 : digits.length() - digits.indexOf('.') - 1;
        if (decimals + more.digits().length() > 2) return Optional.empty();
        String text = (decimals == 0 ? digits + "." : digits) + more.digits();
        String unit = weight.unit().orElse(draft.scene.metric() ? "kg" : "lb");
        return Optional.of(Clockable.figure(text, Optional.of(unit), weight.from(), more.until()));
    }

    private boolean lately(Told.Clock clock) {
        LocalTime now = draft.scene.now().atZone(draft.scene.zone()).toLocalTime();
        int day = (clock.half() == Half.EITHER ? 12 : 24) * 60;
        int back = now.getHour() * 60 + now.getMinute() - clock.hour() * 60 - clock.minute();
        return Math.floorMod(back, day) <= LATELY_MINUTES;
    }
}
