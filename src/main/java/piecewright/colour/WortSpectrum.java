package piecewright.colour;

import piecewright.quantity.Units;

/**
 * How wort or beer of a given colour absorbs light. One number stands for the whole spectrum, so a real wort may differ
 * by about 4 units of CIE Lab.
 */
public final class WortSpectrum {
    /** Source: SRM = 12.7 times the absorbance at 430 nm in 1 cm (ASBC method of beer colour). */
    private static final double SRM_PER_ABSORBANCE = 12.7;
    /** Source: A. J. deLange in Bamforth (ed.), Brewing Materials and Processes, 2016; quoted second hand. */
    private static final double STEEP_RATIO = 0.02465;
    /** Source: the same, the steep part falls by e every 17.591 nm. */
    private static final double STEEP_FALL_PER_NM = 1 / 17.591;
    /** Source: the same, the shallow part. */
    private static final double SHALLOW_RATIO = 0.97535;
    /** Source: the same, the shallow part falls by e every 82.122 nm. */
    private static final double SHALLOW_FALL_PER_NM = 1 / 82.122;

    private WortSpectrum() {}

    /** Absorbance over that at 430 nm; 1 at 430 nm. */
    public static double shapeRatio(double wavelengthNm) {
        double beyondNm = wavelengthNm - 430;
        return STEEP_RATIO * Math.exp(-beyondNm * STEEP_FALL_PER_NM)
                + SHALLOW_RATIO * Math.exp(-beyondNm * SHALLOW_FALL_PER_NM);
    }

    /**
     * Daylight seen through it.
     *
     * @param colourEbc 0 or more
     * @param pathCm length of the path, cm, 0 or more
     */
    public static Tristimulus seenThrough(double colourEbc, double pathCm) {
        if (!(colourEbc >= 0)) throw new IllegalArgumentException("colourEbc must be 0 or more: " + colourEbc);
        if (!(pathCm >= 0)) throw new IllegalArgumentException("pathCm must be 0 or more: " + pathCm);
        double absorbance = Units.srmOfEbc(colourEbc) / SRM_PER_ABSORBANCE * pathCm;
        return StandardObserver.seenThrough(nm -> Math.pow(10, -absorbance * shapeRatio(nm)));
    }
}
