package piecewright.quantity;

/** A closed range of congress-wort colours in EBC units, 0 or more, low at most high. */
public record EbcRange(double lowEbc, double highEbc) {
    public EbcRange {
        if (!(lowEbc >= 0 && lowEbc <= highEbc)) {
            throw new IllegalArgumentException("need 0 <= lowEbc <= highEbc: " + lowEbc + ", " + highEbc);
        }
    }

    /** The middle of it, EBC. */
    public double middleEbc() {
        return (lowEbc + highEbc) / 2;
    }

    public boolean contains(double colourEbc) {
        return colourEbc >= lowEbc && colourEbc <= highEbc;
    }
}
