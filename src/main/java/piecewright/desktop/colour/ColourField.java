package piecewright.desktop.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import piecewright.app.ColourChoice;
import piecewright.colour.ColourBand;
import piecewright.colour.Cure.Cured;
import piecewright.colour.CureMap;
import piecewright.colour.RoastMap;
import piecewright.colour.RoastSolver;
import piecewright.colour.RoastSolver.Roasted;
import piecewright.house.House;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.ColourLever;
import piecewright.style.MaltStyle;
import piecewright.style.RoastSchedule.HeatStep;

/**
 * Colour, enzymes and moisture of a style over time and temperature of the heat that colours it, its cure or its last
 * roast; between the points that were computed by straight lines, of colour by straight lines of its logarithm. Pure.
 *
 * @param hottestC what the kit holds; infinite where no kit is asked
 */
record ColourField(MaltStyle style, double hottestC, List<List<Cell>> rows) {
    /** Judgement: within so many degrees of the style's oven a roast is still that style's, K. */
    private static final double LIKE_K = 3;

    ColourField {
        Objects.requireNonNull(style);
        rows = rows.stream().map(List::copyOf).toList();
        if (rows.size() < 2 || rows.get(0).size() < 2) {
            throw new IllegalArgumentException("a field needs two rows of two points at least");
        }
    }

    /** A point of the map. */
    record Point(double hours, double heatC) {}

    /** What a point gives. */
    record Cell(Point at, double colourEbc, double enzymeFraction, double moistureFraction) {}

    /** Why a point is out of the question. */
    enum Barred {
        TOO_HOT,
        KIT_TOO_COOL,
        STAYS_MOIST,
        NOT_THE_STYLE
    }

    static ColourField of(MaltStyle style, House house) {
        Optional<House> kit = Optional.of(house);
        if (isRoasted(style)) {
            RoastMap map = ColourChoice.roasts(style, kit);
            double hottestC = ColourChoice.aim(kit).kit().hottestOvenC();
            List<Cell> cells = map.cells().stream()
                    .map(RoastMap.Cell::roasted)
                    .map(ColourField::cell)
                    .toList();
            return new ColourField(style, hottestC, inRows(cells));
        }
        List<Cell> cells = ColourChoice.map(style, kit).cells().stream()
                .map(CureMap.Cell::cured)
                .map(ColourField::cell)
                .toList();
        return new ColourField(style, ColourChoice.hottestC(kit), inRows(cells));
    }

    private static boolean isRoasted(MaltStyle style) {
        return style.finish().lever() == ColourLever.ROAST_MINUTES;
    }

    private static Cell cell(Cured cured) {
        Point at = new Point(cured.cureHours(), cured.cureC());
        return new Cell(at, cured.colourEbc(), cured.diastaticFraction(), cured.endMoistureFraction());
    }

    private static Cell cell(Roasted roasted) {
        Point at = new Point(roasted.last().toSeconds() / 3600.0, roasted.lastC());
        return new Cell(at, roasted.colourEbc(), RoastSolver.DIASTATIC_FRACTION, roasted.endMoistureFraction());
    }

    private static List<List<Cell>> inRows(List<Cell> all) {
        int columns = (int) all.stream()
                .filter(cell -> cell.at().heatC() == all.get(0).at().heatC())
                .count();
        List<List<Cell>> rows = new ArrayList<>();
        for (int i = 0; i + columns <= all.size(); i += columns) rows.add(all.subList(i, i + columns));
        return rows;
    }

    /** Whether its last roast colours the malt, not the cure. */
    boolean isRoast() {
        return isRoasted(style);
    }

    double leastC() {
        return rows.get(0).get(0).at().heatC();
    }

    double mostC() {
        return rows.get(rows.size() - 1).get(0).at().heatC();
    }

    double leastHours() {
        return rows.get(0).get(0).at().hours();
    }

    double mostHours() {
        List<Cell> row = rows.get(0);
        return row.get(row.size() - 1).at().hours();
    }

    double colourEbc(Point at) {
        return Math.exp(between(at, cell -> Math.log(cell.colourEbc())));
    }

    /** Between which colours four malts in five come out that aim at this one. */
    ColourBand band(double colourEbc) {
        return ColourBand.of(style, colourEbc);
    }

    /** Share of the green malt's enzyme power that is left. */
    double enzymeFraction(Point at) {
        return between(at, Cell::enzymeFraction);
    }

    double moistureFraction(Point at) {
        return between(at, Cell::moistureFraction);
    }

    /** What is usual for the style. */
    Usual usual() {
        if (isRoast()) {
            HeatStep last = style.oven().roast().orElseThrow().last();
            return new Usual(
                    last.shortestMinutes() / 60,
                    last.longestMinutes() / 60,
                    last.ovenC() - LIKE_K,
                    last.ovenC() + LIKE_K);
        }
        var kiln = style.kiln();
        return new Usual(
                kiln.cureHours().lowHours(),
                kiln.cureHours().highHours(),
                kiln.cureC().lowC(),
                kiln.cureC().highC());
    }

    /** A stretch of hours and one of temperatures. */
    record Usual(double leastHours, double mostHours, double coolestC, double hottestC) {
        boolean has(Point at) {
            return at.heatC() >= coolestC - 1e-9
                    && at.heatC() <= hottestC + 1e-9
                    && at.hours() >= leastHours - 1e-9
                    && at.hours() <= mostHours + 1e-9;
        }
    }

    Optional<Barred> barred(Point at) {
        if (isRoast() && at.heatC() > OvenLimit.CEILING_C + 1e-9) return Optional.of(Barred.TOO_HOT);
        if (at.heatC() > hottestC + 1e-9) return Optional.of(Barred.KIT_TOO_COOL);
        if (moistureFraction(at) > dryEnoughFraction()) return Optional.of(Barred.STAYS_MOIST);
        return usual().has(at) ? Optional.empty() : Optional.of(Barred.NOT_THE_STYLE);
    }

    private double dryEnoughFraction() {
        return isRoast()
                ? style.oven().roast().orElseThrow().endMoistureFraction()
                : style.kiln().endMoistureFraction();
    }

    /** The temperature that gives a colour in so many hours; empty when none on the map does. */
    OptionalDouble heatC(double colourEbc, double hours) {
        double low = leastC();
        double high = mostC();
        if (colourEbc(new Point(hours, low)) > colourEbc || colourEbc(new Point(hours, high)) < colourEbc) {
            return OptionalDouble.empty();
        }
        for (int i = 0; i < 40; i++) {
            double middle = (low + high) / 2;
            if (colourEbc(new Point(hours, middle)) < colourEbc) low = middle;
            else high = middle;
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /** A point nearest to another that lies on the map. */
    Point onMap(Point at) {
        return new Point(
                Math.max(leastHours(), Math.min(mostHours(), at.hours())),
                Math.max(leastC(), Math.min(mostC(), at.heatC())));
    }

    private double between(Point wanted, ToDoubleFunction<Cell> figure) {
        Point at = onMap(wanted);
        double row = (at.heatC() - leastC()) / (mostC() - leastC()) * (rows.size() - 1);
        double column = (at.hours() - leastHours())
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

    private static double mixed(List<Cell> row, int before, double along, ToDoubleFunction<Cell> figure) {
        double first = figure.applyAsDouble(row.get(before));
        return first + along * (figure.applyAsDouble(row.get(before + 1)) - first);
    }
}
