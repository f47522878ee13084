package piecewright.colour;

import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;
import piecewright.style.ColourLever;
import piecewright.style.KilnSchedule;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;

/**
 * Finds what a style leaves free so that it comes to a colour, whatever that is: its cure, or the minutes of its roast.
 *
 * @param hottestCureC hottest air-on the house holds for curing, °C; infinite where no house is given
 * @param hottestOvenC hottest oven the house may roast in, °C; infinite where no house is given
 */
public record ColourAim(KilnParameters parameters, double hottestCureC, double hottestOvenC) {
    /** How the style reaches that colour, EBC, or the nearest it comes. */
    public ColourReach reach(MaltStyle style, double colourEbc) {
        return style.finish().lever() == ColourLever.ROAST_MINUTES
                ? new RoastSolver(style, parameters, hottestOvenC).reach(colourEbc)
                : new CureSolver(new Cure(style, parameters), hottestCureC).reach(colourEbc);
    }

    /** The style with what was free fixed at what was found, so that a plan aims at it; as it was if nothing was. */
    public static MaltStyle aimed(MaltStyle style, ColourReach reach) {
        if (reach instanceof ColourReach.Reached found) return cured(style, found.cured());
        if (reach instanceof ColourReach.OutOfReach found) return cured(style, found.nearest());
        if (reach instanceof ColourReach.ReachedByRoast found) return roasted(style, found.roasted());
        if (reach instanceof ColourReach.RoastOutOfReach found) return roasted(style, found.nearest());
        return style;
    }

    private static MaltStyle cured(MaltStyle style, Cure.Cured found) {
        KilnSchedule kiln = style.kiln();
        return style.withKiln(new KilnSchedule(
                kiln.ladder(),
                new TemperatureRange(found.cureC(), found.cureC()),
                new HoursRange(found.cureHours(), found.cureHours()),
                kiln.endMoistureFraction(),
                kiln.colourBase()));
    }

    private static MaltStyle roasted(MaltStyle style, RoastSolver.Roasted found) {
        OvenSchedule oven = style.oven();
        return style.withOven(
                new OvenSchedule(oven.stew(), oven.roast().map(roast -> roast.withLastMinutes(found.lastMinutes()))));
    }
}
