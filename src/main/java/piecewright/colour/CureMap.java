package piecewright.colour;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import piecewright.colour.Cure.Cured;

/** The cure of a style over temperature and hours, as data for a picture; rows of equal temperature, coolest first. */
public record CureMap(List<Cell> cells) {
    /** Judgement: hours beyond the style's that are still worth seeing. */
    private static final double LONGEST_HOURS = 6;
    /** Judgement: degrees beyond the style's that are still worth seeing. */
    private static final double MARGIN_C = 10;

    private static final int STEPS = 6;

    public CureMap {
        cells = List.copyOf(cells);
    }

    /** One point and what forbids it; nothing forbids what may be done. */
    public record Cell(Cured cured, Set<Forbidden> forbidden) {
        public Cell {
            forbidden = Set.copyOf(forbidden);
        }
    }

    /** Why a cure is out of the question. */
    public enum Forbidden {
        NOT_THE_STYLE,
        HEATER_TOO_COOL,
        STAYS_TOO_MOIST
    }

    /**
     * @param hottestC hottest air-on the house holds for curing, °C; infinite where no house is given
     */
    public static CureMap of(Cure cure, double hottestC) {
        double lowC = cure.style().kiln().cureC().lowC() - MARGIN_C;
        double highC = cure.style().kiln().cureC().highC() + MARGIN_C;
        List<Cell> cells = new ArrayList<>();
        for (double cureC = lowC; cureC <= highC + 1e-9; cureC += (highC - lowC) / STEPS) {
            for (int hours = 1; hours <= LONGEST_HOURS; hours++) {
                Cured cured = cure.at(cureC, hours);
                cells.add(new Cell(cured, forbidden(cure, cured, hottestC)));
            }
        }
        return new CureMap(cells);
    }

    private static Set<Forbidden> forbidden(Cure cure, Cured cured, double hottestC) {
        Set<Forbidden> forbidden = new TreeSet<>();
        var kiln = cure.style().kiln();
        boolean hoursFit = cured.cureHours() >= kiln.cureHours().lowHours()
                && cured.cureHours() <= kiln.cureHours().highHours();
        if (!hoursFit || !kiln.cureC().contains(cured.cureC())) forbidden.add(Forbidden.NOT_THE_STYLE);
        if (cured.cureC() > hottestC) forbidden.add(Forbidden.HEATER_TOO_COOL);
        if (cured.endMoistureFraction() > kiln.endMoistureFraction()) forbidden.add(Forbidden.STAYS_TOO_MOIST);
        return forbidden;
    }
}
