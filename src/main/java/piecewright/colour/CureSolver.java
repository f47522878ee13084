package piecewright.colour;

import java.util.function.DoubleFunction;
import piecewright.colour.ColourReach.Change;
import piecewright.colour.Cure.Cured;
import piecewright.quantity.HoursRange;
import piecewright.quantity.TemperatureRange;

/**
 * Finds the cure of a style that gives a colour. First the hours at the middle of the style's temperatures; when they do
 * not do, the temperature at its middle hours; then the corner of both. Never outside the style's cure.
 */
public final class CureSolver {
    private static final int HALVINGS = 24;

    private final Cure cure;
    private final double hottestC;

    /**
     * @param hottestC hottest air-on the house holds for curing, °C; infinite where no house is given
     */
    public CureSolver(Cure cure, double hottestC) {
        this.cure = cure;
        this.hottestC = hottestC;
    }

    /** How the style reaches that colour, EBC. */
    public ColourReach reach(double colourEbc) {
        TemperatureRange range = cure.style().kiln().cureC();
        HoursRange hours = cure.style().kiln().cureHours();
        if (hottestC < range.lowC()) return new ColourReach.NoHeater(range.lowC(), hottestC);
        double topC = Math.min(range.highC(), hottestC);
        double middleC = Math.min(topC, (range.lowC() + range.highC()) / 2);
        double middleHours = (hours.lowHours() + hours.highHours()) / 2;
        Cured palest = cure.at(range.lowC(), hours.lowHours());
        Cured darkest = cure.at(topC, hours.highHours());
        if (colourEbc < palest.colourEbc()) return new ColourReach.OutOfReach(palest, Change.A_PALER_STYLE);
        if (colourEbc > darkest.colourEbc()) return new ColourReach.OutOfReach(darkest, change(colourEbc, hours));
        Cured shortest = cure.at(middleC, hours.lowHours());
        Cured longest = cure.at(middleC, hours.highHours());
        if (colourEbc >= shortest.colourEbc() && colourEbc <= longest.colourEbc()) {
            return solved(colourEbc, hours.lowHours(), hours.highHours(), h -> cure.at(middleC, h));
        }
        double atHours = colourEbc > longest.colourEbc() ? hours.highHours() : hours.lowHours();
        Cured cool = cure.at(range.lowC(), middleHours);
        Cured hot = cure.at(topC, middleHours);
        boolean middleDoes = colourEbc >= cool.colourEbc() && colourEbc <= hot.colourEbc();
        double usedHours = middleDoes ? middleHours : atHours;
        return solved(colourEbc, range.lowC(), topC, c -> cure.at(c, usedHours));
    }

    private Change change(double colourEbc, HoursRange hours) {
        double topC = cure.style().kiln().cureC().highC();
        boolean heaterHolds = hottestC >= topC;
        boolean hotterWould = !heaterHolds && cure.at(topC, hours.highHours()).colourEbc() >= colourEbc;
        return hotterWould ? Change.A_HOTTER_HEATER : Change.A_DARKER_STYLE;
    }

    private ColourReach solved(double colourEbc, double low, double high, DoubleFunction<Cured> at) {
        double from = low;
        double until = high;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (from + until) / 2;
            if (at.apply(middle).colourEbc() < colourEbc) from = middle;
            else until = middle;
        }
        Cured cured = at.apply(until);
        return new ColourReach.Reached(cured, ColourBand.of(cure.style(), cured.colourEbc()));
    }
}
