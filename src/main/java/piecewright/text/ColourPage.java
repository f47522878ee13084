package piecewright.text;

import java.time.Duration;
import java.util.Locale;
import piecewright.colour.ColourReach;
import piecewright.colour.Cure.Cured;
import piecewright.colour.RoastSolver.Roasted;
import piecewright.colour.Swatch;
import piecewright.quantity.Units;

/** A malt colour on all scales, and how styles reach it, in sentences. */
public final class ColourPage {
    private final QuantityFormat quantities;

    public ColourPage(DisplayUnits units) {
        this.quantities = new QuantityFormat(units);
    }

    public String head(double colourEbc) {
        double srm = Units.srmOfEbc(colourEbc);
        return String.format(
                Locale.ROOT,
                "%.1f EBC = %.1f SRM (EBC = 25/12.7 SRM) = %.1f °L (SRM = 1.3546 °L - 0.76); wort in 1 cm: #%s\n",
                colourEbc,
                srm,
                Units.lovibondOfSrm(srm),
                Swatch.ofMalt(colourEbc).hex());
    }

    public String way(String style, ColourReach reach) {
        return Paragraph.of("  " + style + ": ", sentence(reach));
    }

    private String sentence(ColourReach reach) {
        if (reach instanceof ColourReach.Reached reached) {
            return "cure " + cure(reached.cured()) + "; four times in five "
                    + quantities.colour(reached.band().lowEbc()) + " to "
                    + quantities.colour(reached.band().highEbc()) + ", about "
                    + quantities.percent(reached.cured().diastaticFraction())
                    + " of the enzyme power left, give or take 15 points.";
        }
        if (reach instanceof ColourReach.OutOfReach out) {
            return outOfReach(out.nearest().colourEbc(), cure(out.nearest()), out.change());
        }
        if (reach instanceof ColourReach.ReachedByRoast reached) {
            return "roast the last " + roast(reached.roasted()) + "; four times in five "
                    + quantities.colour(reached.band().lowEbc()) + " to "
                    + quantities.colour(reached.band().highEbc()) + ", no enzyme power left.";
        }
        if (reach instanceof ColourReach.RoastOutOfReach out) {
            return outOfReach(out.nearest().colourEbc(), roast(out.nearest()), out.change());
        }
        ColourReach.NoHeater cold = (ColourReach.NoHeater) reach;
        return "no heater here does it: it takes " + quantities.temperature(cold.neededC()) + ", the hottest holds "
                + quantities.temperature(cold.hottestC()) + ".";
    }

    private String outOfReach(double nearestEbc, String how, ColourReach.Change needed) {
        String change = switch (needed) {
            case A_PALER_STYLE -> "a paler style";
            case A_DARKER_STYLE -> "a darker style";
            case A_HOTTER_HEATER -> "a hotter heater";
        };
        return "out of reach; it comes to " + quantities.colour(nearestEbc) + " at " + how + ". It takes " + change
                + ".";
    }

    private String roast(Roasted roasted) {
        return quantities.time(Duration.ofMinutes(roasted.lastMinutes())) + " at "
                + quantities.temperature(roasted.lastC());
    }

    private String cure(Cured cured) {
        return quantities.time(Duration.ofMinutes(Math.round(cured.cureHours() * 60))) + " at "
                + quantities.temperature(cured.cureC());
    }
}
