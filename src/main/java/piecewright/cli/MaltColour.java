package piecewright.cli;

import piecewright.text.DisplayUnits;
import piecewright.text.QuantityParser;
import piecewright.text.UnreadableException;

/** A malt's colour as typed. */
final class MaltColour {
    private static final double DARKEST_EBC = 1600;

    private MaltColour() {}

    static double ebc(String option, String typed, DisplayUnits units) throws OptionException {
        try {
            double colourEbc = QuantityParser.forPerson(units).colourEbc(typed);
            if (colourEbc > 0 && colourEbc <= DARKEST_EBC) return colourEbc;
            throw new OptionException(option, "must be more than nothing and at most 1600 EBC");
        } catch (UnreadableException unreadable) {
            throw new OptionException(option, String.valueOf(unreadable.getMessage()));
        }
    }
}
