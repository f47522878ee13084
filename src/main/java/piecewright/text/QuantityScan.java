package piecewright.text;

import java.util.Optional;

/** One pass over a typed quantity: number, unit, and perhaps a smaller part such as the ounces after the pounds. */
final class QuantityScan {
    private final Measure measure;
    private final String text;
    private int at;

    QuantityScan(Measure measure, String text, int from) {
        this.measure = measure;
        this.text = text;
        this.at = from;
    }

    /** The quantity in the unit used inside; the message of the exception is a clause. */
    double read(DecimalReader decimals, Optional<DisplayUnits> bare, int sign) throws UnreadableException {
        double figure = sign * number(decimals);
        skipSpaces();
        if (at == text.length()) return withoutUnit(figure, bare);
        UnitSpelling unit = unit();
        double inside = unit.toInside().applyAsDouble(figure);
        skipSpaces();
        while (at < text.length()) {
            int partAt = at;
            double part = number(decimals);
            skipSpaces();
            UnitSpelling next = unit();
            if (!unit.mayBeFollowedBy(next)) throw new UnreadableException(stuck(partAt));
            double partInside = next.toInside().applyAsDouble(part);
            if (partInside >= unit.toInside().applyAsDouble(1)) {
                throw new UnreadableException("\"" + text.substring(partAt, at) + "\" is as much as one "
                        + unit.spellings().get(0) + " or more");
            }
            inside += partInside;
            unit = next;
            skipSpaces();
        }
        return inside;
    }

    private double number(DecimalReader decimals) throws UnreadableException {
        int from = at;
        while (at < text.length() && (Character.isDigit(text.charAt(at)) || ",.".indexOf(text.charAt(at)) >= 0)) at++;
        if (text.substring(from, at).chars().noneMatch(Character::isDigit)) {
            throw new UnreadableException("a number is missing at character " + (from + 1));
        }
        return decimals.read(text.substring(from, at));
    }

    private UnitSpelling unit() throws UnreadableException {
        UnitSpelling best = null;
        int longest = 0;
        for (UnitSpelling unit : measure.units()) {
            int length = unit.matchAt(text, at);
            if (length > longest) {
                longest = length;
                best = unit;
            }
        }
        if (best == null) {
            if (at == text.length()) throw new UnreadableException("the last number has no unit");
            throw new UnreadableException(stuck(at));
        }
        at += longest;
        return best;
    }

    private double withoutUnit(double figure, Optional<DisplayUnits> bare) throws UnreadableException {
        if (bare.isEmpty()) throw new UnreadableException("the unit is missing");
        String spelling = BareUnits.spelling(measure, bare.get());
        return measure.units().stream()
                .filter(unit -> unit.spellings().contains(spelling))
                .findFirst()
                .orElseThrow()
                .toInside()
                .applyAsDouble(figure);
    }

    private String stuck(int from) {
        return "\"" + Quoted.shortly(text.substring(from)) + "\" at character " + (from + 1) + " is not a unit of "
                + measure.noun() + " that can stand there";
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') at++;
    }
}
