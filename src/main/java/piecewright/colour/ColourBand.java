package piecewright.colour;

/** Between which colours four malts in five come out, EBC. */
public record ColourBand(double lowEbc, double highEbc) {
    /** Judgement: fitted; residuals of kilned malts up to 110 °C. */
    public static final double KILNED_RATIO = 1.3;

    /** The band about the colour of a kilned malt. */
    public static ColourBand ofKilned(double colourEbc) {
        return new ColourBand(colourEbc / KILNED_RATIO, colourEbc * KILNED_RATIO);
    }
}
