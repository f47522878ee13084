package piecewright.desktop.colour;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import piecewright.app.ColourChoice;
import piecewright.colour.Cure.Cured;
import piecewright.colour.CureMap;
import piecewright.house.House;
import piecewright.style.MaltStyle;

/**
 * Colour, enzymes and moisture of a style over hours and temperature of its cure, between the points of a
 * {@link CureMap} by straight lines; colour by straight lines of its logarithm. Pure.
 *
 * @param hottestC what the kit holds; infinite where no kit is asked
 */
record ColourField(MaltStyle style, double hottestC, List<List<Cured>> rows) {
    ColourField {
        Objects.requireNonNull(style);
        rows = rows.stream().map(List::copyOf).toList();
        if (rows.size() < 2 || rows.get(0).size() < 2) {
            throw new IllegalArgumentException("a field needs two rows of two points at least");
        }
    }

    /** A point of the map. */
    record Point(double cureHours, double cureC) {}

    /** Why a point is out of the question. */
    enum Barred {
        KIT_TOO_COOL,
        STAYS_MOIST,
        NOT_THE_STYLE
    }

    static ColourField of(MaltStyle style, House house) {
        CureMap map = ColourChoice.map(style, Optional.of(house));
        List<Cured> all = map.cells().stream().map(CureMap.Cell::cured).toList();
        long columns = all.stream()
                .filter(cured -> cured.cureC() == all.get(0).cureC())
                .count();
        List<List<Cured>> rows = new java.util.ArrayList<>();
        for (int i = 0; i + columns <= all.size(); i += (int) columns) {
            rows.add(all.subList(i, i + (int) columns));
        }
        return new ColourField(style, ColourChoice.hottestC(Optional.of(house)), rows);
    }

    double leastC() {
        return rows.get(0).get(0).cureC();
    }

    double mostC() {
        return rows.get(rows.size() - 1).get(0).cureC();
    }

    double leastHours() {
        return rows.get(0).get(0).cureHours();
    }

    double mostHours() {
        List<Cured> row = rows.get(0);
        return row.get(row.size() - 1).cureHours();
    }

    double colourEbc(Point at) {
        return Math.exp(between(at, cured -> Math.log(cured.colourEbc())));
    }

    /** Share of the green malt's enzyme power that is left. */
    double enzymeFraction(Point at) {
        return between(at, Cured::diastaticFraction);
    }

    double moistureFraction(Point at) {
        return between(at, Cured::endMoistureFraction);
    }

    Optional<Barred> barred(Point at) {
        if (at.cureC() > hottestC + 1e-9) return Optional.of(Barred.KIT_TOO_COOL);
        if (moistureFraction(at) > style.kiln().endMoistureFraction()) return Optional.of(Barred.STAYS_MOIST);
        boolean ours = style.kiln().cureC().contains(at.cureC())
                && at.cureHours() >= style.kiln().cureHours().lowHours() - 1e-9
                && at.cureHours() <= style.kiln().cureHours().highHours() + 1e-9;
        return ours ? Optional.empty() : Optional.of(Barred.NOT_THE_STYLE);
    }

    /** The temperature that gives a colour in so many hours; empty when none on the map does. */
    OptionalDouble cureC(double colourEbc, double cureHours) {
        double low = leastC();
        double high = mostC();
        if (colourEbc(new Point(cureHours, low)) > colourEbc || colourEbc(new Point(cureHours, high)) < colourEbc) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (colourEbc(new Point(cureHours, middle)) < colourEbc) low = middle;
            else high = middle;
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /** A point nearest to another that lies on the map. */
    Point onMap(Point at) {
        return new Point(
                Math.max(leastHours(), Math.min(mostHours(), at.cureHours())),
                Math.max(leastC(), Math.min(mostC(), at.cureC())));
    }

    private double between(Point wanted, ToDoubleFunction<Cured> figure) {
        Point at = onMap(wanted);
        double row = (at.cureC() - leastC()) / (mostC() - leastC()) * (rows.size() - 1);
        double column = (at.cureHours() - leastHours())
                / (mostHours() - leastHours())
                * (rows.get(0).size() - 1);
        int below = Math.min(rows.size() - 2, (int) row);
        int before = Math.min(rows.get(0).size() - 2, (int) column);
        double up = row - below;
        double along = column - before;
        double low = mixed(rows.get(below), before, along, figure);
        double high = mixed(rows.get(below + 1), before, along, figure);
        return low + up * (high - low);
    }

    private static double mixed(List<Cured> row, int before, double along, ToDoubleFunction<Cured> figure) {
        double first = figure.applyAsDouble(row.get(before));
        return first + along * (figure.applyAsDouble(row.get(before + 1)) - first);
    }
}
