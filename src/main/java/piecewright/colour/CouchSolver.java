package piecewright.colour;

import piecewright.colour.Cure.Cured;
import piecewright.process.kiln.KilnParameters;
import piecewright.quantity.HoursRange;
import piecewright.style.HotCouchSchedule;
import piecewright.style.MaltStyle;

/**
 * Finds when the hot couch of a style is best broken, and its cure, for a colour. First the couch index at the middle of
 * the cure, as the couch makes what the cure colours; when no index of the style does, the cure at the nearest one. Never
 * outside the style's index or cure.
 */
public final class CouchSolver {
    /** Judgement: the index is found to a hundredth of an hour, a thousandth of the colour. */
    private static final double NEAR_HOURS = 0.01;

    private final MaltStyle style;
    private final HotCouchSchedule couch;
    private final KilnParameters parameters;
    private final double hottestC;

    /**
     * @param style a style with a hot couch
     * @param hottestC hottest air-on the house holds for curing, °C; infinite where no house is given
     */
    public CouchSolver(MaltStyle style, KilnParameters parameters, double hottestC) {
        this.style = style;
        this.couch = style.couches().hot().orElseThrow();
        this.parameters = parameters;
        this.hottestC = hottestC;
    }

    /** How the style reaches that colour, EBC. */
    public ColourReach reach(double colourEbc) {
        double coolestC = style.kiln().cureC().lowC();
        if (hottestC < coolestC) return new ColourReach.NoHeater(coolestC, hottestC);
        HoursRange index = couch.acceptableIndex();
        if (colourEbc <= middling(index.lowHours()).colourEbc()) return byCure(index.lowHours(), colourEbc);
        if (colourEbc >= middling(index.highHours()).colourEbc()) return byCure(index.highHours(), colourEbc);
        double from = index.lowHours();
        double until = index.highHours();
        while (until - from > NEAR_HOURS) {
            double middle = (from + until) / 2;
            if (middling(middle).colourEbc() < colourEbc) from = middle;
            else until = middle;
        }
        Cured found = middling(until);
        return new ColourReach.Reached(found, ColourBand.of(style, found.colourEbc()));
    }

    /** After a couch broken at this index, the middle of the cure that the house holds. */
    private Cured middling(double indexHours) {
        var kiln = style.kiln();
        double middleC = (kiln.cureC().lowC() + kiln.cureC().highC()) / 2;
        double middleHours = (kiln.cureHours().lowHours() + kiln.cureHours().highHours()) / 2;
        return cure(indexHours).at(Math.min(middleC, hottestC), middleHours);
    }

    private ColourReach byCure(double indexHours, double colourEbc) {
        return new CureSolver(cure(indexHours), hottestC).reach(colourEbc);
    }

    private Cure cure(double indexHours) {
        return new Cure(style.withCouches(style.couches().withIndexHours(indexHours)), parameters);
    }
}
