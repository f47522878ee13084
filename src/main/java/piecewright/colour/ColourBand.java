package piecewright.colour;

import piecewright.process.kiln.ColourParameters;
import piecewright.style.MaltStyle;

/** Between which colours four malts in five come out, EBC. */
public record ColourBand(double lowEbc, double highEbc) {
    /** Judgement: fitted; residuals of kilned malts up to 110 °C. */
    public static final double KILNED_RATIO = 1.3;
    /** Judgement: fitted; residuals of malts that heated themselves in a hot couch. */
    public static final double COUCHED_RATIO = 2;
    /** Judgement: fitted; residuals of malts roasted dry. */
    public static final double ROASTED_RATIO = 1.7;
    /** Judgement: fitted; residuals of stewed and roasted malts. */
    public static final double STEWED_RATIO = 1.8;

    /** The band about the colour of a malt of that style. */
    public static ColourBand of(MaltStyle style, double colourEbc) {
        double ratio = ratioOf(style);
        return new ColourBand(colourEbc / ratio, Math.min(ColourParameters.MOST_EBC, colourEbc * ratio));
    }

    /** By which factor eight malts in ten of that style come out lighter or darker at most. */
    public static double ratioOf(MaltStyle style) {
        if (style.oven().stew().isPresent()) return STEWED_RATIO;
        if (style.oven().roast().isPresent()) return ROASTED_RATIO;
        return style.couches().hot().isPresent() ? COUCHED_RATIO : KILNED_RATIO;
    }

    /** The band about the colour of a kilned malt. */
    public static ColourBand ofKilned(double colourEbc) {
        return new ColourBand(colourEbc / KILNED_RATIO, colourEbc * KILNED_RATIO);
    }
}
