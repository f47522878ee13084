package piecewright.colour;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import piecewright.colour.RoastSolver.Roasted;
import piecewright.process.kiln.KilnParameters;
import piecewright.process.kiln.OvenLimit;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;
import piecewright.style.RoastSchedule;
import piecewright.style.RoastSchedule.HeatStep;

/** The last roast of a style over oven temperature and minutes, as data for a picture; rows of equal temperature, coolest first. */
public record RoastMap(List<Cell> cells) {
    /** Judgement: degrees beyond the style's that are still worth seeing. */
    private static final double MARGIN_C = 15;
    /** Judgement: no oven roasts hotter; the equations end there too, °C. */
    private static final double HOTTEST_C = 230;

    private static final int STEPS = 6;

    public RoastMap {
        cells = List.copyOf(cells);
    }

    /** One point and what forbids it; nothing forbids what may be done. */
    public record Cell(Roasted roasted, Set<Forbidden> forbidden) {
        public Cell {
            forbidden = Set.copyOf(forbidden);
        }
    }

    /** Why a roast is out of the question. */
    public enum Forbidden {
        NOT_THE_STYLE,
        OVEN_TOO_COOL,
        TOO_HOT_FOR_A_KITCHEN,
        STAYS_TOO_MOIST
    }

    /**
     * @param style a style that is roasted
     * @param hottestC hottest oven the house may roast in, °C; infinite where no house is given
     */
    public static RoastMap of(MaltStyle style, KilnParameters parameters, double hottestC) {
        HeatStep last = style.oven().roast().orElseThrow().last();
        double spanMinutes = last.longestMinutes() - last.shortestMinutes();
        double fromMinutes = Math.max(spanMinutes / STEPS, last.shortestMinutes() - spanMinutes);
        double stepMinutes = (last.longestMinutes() + spanMinutes - fromMinutes) / STEPS;
        double hottestShownC = Math.min(HOTTEST_C, last.ovenC() + MARGIN_C);
        List<Cell> cells = new ArrayList<>();
        for (int row = 0; row <= STEPS; row++) {
            double ovenC = hottestShownC - MARGIN_C * 2 * (1 - (double) row / STEPS);
            MaltStyle at = at(style, ovenC);
            RoastSolver solver = new RoastSolver(at, parameters, Double.POSITIVE_INFINITY);
            for (int column = 0; column <= STEPS; column++) {
                Duration time = Duration.ofMinutes(Math.round(fromMinutes + column * stepMinutes));
                Roasted roasted = solver.at(time);
                cells.add(new Cell(roasted, forbidden(style, roasted, hottestC)));
            }
        }
        return new RoastMap(cells);
    }

    private static MaltStyle at(MaltStyle style, double ovenC) {
        RoastSchedule roast = style.oven().roast().orElseThrow();
        List<HeatStep> steps =
                new ArrayList<>(roast.steps().subList(0, roast.steps().size() - 1));
        steps.add(
                new HeatStep(ovenC, roast.last().shortestMinutes(), roast.last().longestMinutes()));
        RoastSchedule changed = new RoastSchedule(roast.depthCm(), steps, roast.endMoistureFraction());
        return style.withOven(new OvenSchedule(style.oven().stew(), Optional.of(changed)));
    }

    private static Set<Forbidden> forbidden(MaltStyle style, Roasted roasted, double hottestC) {
        Set<Forbidden> forbidden = new TreeSet<>();
        RoastSchedule roast = style.oven().roast().orElseThrow();
        HeatStep last = roast.last();
        double minutes = roasted.last().toSeconds() / 60.0;
        boolean timely = minutes >= last.shortestMinutes() && minutes <= last.longestMinutes();
        if (!timely || roasted.lastC() != last.ovenC()) forbidden.add(Forbidden.NOT_THE_STYLE);
        if (roasted.lastC() > hottestC) forbidden.add(Forbidden.OVEN_TOO_COOL);
        if (roasted.lastC() > OvenLimit.CEILING_C) forbidden.add(Forbidden.TOO_HOT_FOR_A_KITCHEN);
        if (roasted.endMoistureFraction() > roast.endMoistureFraction()) forbidden.add(Forbidden.STAYS_TOO_MOIST);
        return forbidden;
    }
}
