package piecewright.colour;

import java.util.Locale;

/** A colour for a screen: sRGB, each channel 0 to 255. Colours a screen cannot show are clipped channel by channel. */
public record Swatch(int red, int green, int blue) {
    /** Judgement: a swatch of malt shows its congress wort in a 1 cm cell; deeper, dark malts all look black. */
    public static final double MALT_PATH_CM = 1;
    /** Judgement: beer is looked at through about 5 cm of a glass. */
    public static final double BEER_PATH_CM = 5;

    public Swatch {
        check("red", red);
        check("green", green);
        check("blue", blue);
    }

    /** Congress wort of a malt of that colour, 0 EBC or more, in a 1 cm cell. */
    public static Swatch ofMalt(double colourEbc) {
        return of(WortSpectrum.seenThrough(colourEbc, MALT_PATH_CM));
    }

    /** Beer of that colour, 0 EBC or more, in a glass. */
    public static Swatch ofBeer(double colourEbc) {
        return of(WortSpectrum.seenThrough(colourEbc, BEER_PATH_CM));
    }

    /** Source of the matrix and of the curve: IEC 61966-2-1 (sRGB). */
    public static Swatch of(Tristimulus seen) {
        double x = seen.xRatio();
        double y = seen.yRatio();
        double z = seen.zRatio();
        return new Swatch(
                channel(3.2404542 * x - 1.5371385 * y - 0.4985314 * z),
                channel(-0.9692660 * x + 1.8760108 * y + 0.0415560 * z),
                channel(0.0556434 * x - 0.2040259 * y + 1.0572252 * z));
    }

    /** Six hexadecimal digits, capital, no sign before them. */
    public String hex() {
        return String.format(Locale.ROOT, "%02X%02X%02X", red, green, blue);
    }

    private static int channel(double linear) {
        double clipped = Math.min(1, Math.max(0, linear));
        double shown = clipped <= 0.0031308 ? 12.92 * clipped : 1.055 * Math.pow(clipped, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * shown);
    }

    private static void check(String name, int channel) {
        if (channel < 0 || channel > 255) throw new IllegalArgumentException(name + " must be in 0..255: " + channel);
    }
}
