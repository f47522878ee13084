package piecewright.colour;

import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;
import piecewright.style.MaltStyle;
import piecewright.style.OvenSchedule;

/**
 * Finds what a style leaves free so that it comes to a colour, whatever that is: its cure, the minutes of its roast, or the
 * hours of its hot couch.
 */
public record ColourAim(KilnParameters parameters, Kit kit) {
    /**
     * What a house does.
     *
     * @param hottestCureC hottest air-on it holds for curing, °C; infinite where no house is given
     * @param hottestOvenC hottest oven it may roast in, °C; infinite where no house is given
     * @param boxes insulated boxes for a hot couch; 1 or more where no house is given
     */
    public record Kit(double hottestCureC, double hottestOvenC, int boxes) {}

    /** How the style reaches that colour, EBC, or the nearest it comes. */
    public ColourReach reach(MaltStyle style, double colourEbc) {
        if (style.couches().hot().isPresent() && kit.boxes() == 0) return new ColourReach.NoBox();
        return switch (style.finish().lever()) {
            case ROAST_MINUTES -> new RoastSolver(style, parameters, kit.hottestOvenC()).reach(colourEbc);
            case COUCH_HOURS -> new CouchSolver(style, parameters, kit.hottestCureC()).reach(colourEbc);
            case CURE_HOURS -> byCure(style, colourEbc);
        };
    }

    /** How it reaches that colour, EBC, by its cure alone. */
    public ColourReach byCure(MaltStyle style, double colourEbc) {
        return new CureSolver(new Cure(style, parameters), kit.hottestCureC()).reach(colourEbc);
    }

    /** Colour, EBC, of this style made as was found for it or for one like it; the house must be able to make it. */
    public double made(MaltStyle style, ColourReach reach) {
        if (reach instanceof ColourReach.Reached found) return cured(style, found.cured(), parameters);
        if (reach instanceof ColourReach.OutOfReach found) return cured(style, found.nearest(), parameters);
        RoastSolver roast = new RoastSolver(style, parameters, kit.hottestOvenC());
        if (reach instanceof ColourReach.ReachedByRoast found) {
            return roast.at(found.roasted().last()).colourEbc();
        }
        if (reach instanceof ColourReach.RoastOutOfReach found) {
            return roast.at(found.nearest().last()).colourEbc();
        }
        throw new IllegalArgumentException("nothing was found: " + reach);
    }

    private static double cured(MaltStyle style, Cure.Cured found, KilnParameters parameters) {
        return new Cure(style, parameters).at(found.cureC(), found.cureHours()).colourEbc();
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
        MaltStyle cured = style.withKiln(style.kiln()
                .withCure(
                        new TemperatureRange(found.cureC(), found.cureC()),
                        new HoursRange(found.cureHours(), found.cureHours())));
        return found.couch()
                .map(couch -> cured.withCouches(cured.couches().withIndexHours(couch.indexHours())))
                .orElse(cured);
    }

    private static MaltStyle roasted(MaltStyle style, RoastSolver.Roasted found) {
        OvenSchedule oven = style.oven();
        return style.withOven(new OvenSchedule(oven.stew(), oven.roast().map(roast -> roast.withLast(found.last()))));
    }
}
