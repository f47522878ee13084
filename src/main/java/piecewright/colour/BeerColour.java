package piecewright.colour;

import piecewright.quantity.Units;

/**
 * What malts add to a beer's colour, by Morey's power law SRM = 1.4922 MCU^0.6859, MCU = Σ lb · °L / US gallon. From
 * memory; said to hold up to about 50 SRM.
 */
public final class BeerColour {
    /** Judgement: Morey's factor, from memory. */
    private static final double FACTOR_SRM = 1.4922;
    /** Judgement: Morey's exponent, from memory. */
    private static final double EXPONENT_RATIO = 0.6859;
    /** Judgement: no one has shown it to hold above; from memory. */
    public static final double VALID_UNTIL_SRM = 50;

    private BeerColour() {}

    /**
     * What is brewed.
     *
     * @param volumeL beer into the fermenter, L, more than 0
     * @param gristKg all malt, kg, more than 0
     * @param shareFraction of it the malt sought, (0, 1]
     * @param restEbc colour of the other malts, EBC
     */
    public record Brew(double volumeL, double gristKg, double shareFraction, double restEbc) {
        public Brew {
            if (!(volumeL > 0)) throw new IllegalArgumentException("volumeL must be above 0: " + volumeL);
            if (!(gristKg > 0)) throw new IllegalArgumentException("gristKg must be above 0: " + gristKg);
            if (!(shareFraction > 0 && shareFraction <= 1)) {
                throw new IllegalArgumentException("shareFraction must be in (0, 1]: " + shareFraction);
            }
            if (!(restEbc >= 0)) throw new IllegalArgumentException("restEbc must be 0 or more: " + restEbc);
        }
    }

    /** Colour of the beer, EBC, when the malt sought has that colour. */
    public static double beerEbc(Brew brew, double maltEbc) {
        double meanLovibond =
                brew.shareFraction() * lovibond(maltEbc) + (1 - brew.shareFraction()) * lovibond(brew.restEbc());
        return Units.ebcOfSrm(FACTOR_SRM * Math.pow(meanLovibond * poundsPerGallon(brew), EXPONENT_RATIO));
    }

    /** Colour of the malt, EBC, that gives the beer that colour; negative when the other malts alone are too dark. */
    public static double maltEbc(Brew brew, double beerEbc) {
        double unitsPerGallon = Math.pow(Units.srmOfEbc(beerEbc) / FACTOR_SRM, 1 / EXPONENT_RATIO);
        double meanLovibond = unitsPerGallon / poundsPerGallon(brew);
        double wanted = (meanLovibond - (1 - brew.shareFraction()) * lovibond(brew.restEbc())) / brew.shareFraction();
        return wanted <= lovibond(0) ? -1 : Units.ebcOfSrm(Units.srmOfLovibond(wanted));
    }

    /** True where the law is said to hold. */
    public static boolean holdsFor(double beerEbc) {
        return Units.srmOfEbc(beerEbc) <= VALID_UNTIL_SRM;
    }

    private static double lovibond(double colourEbc) {
        return Units.lovibondOfSrm(Units.srmOfEbc(colourEbc));
    }

    private static double poundsPerGallon(Brew brew) {
        return brew.gristKg() / Units.KG_PER_POUND / (brew.volumeL() / Units.L_PER_US_GALLON);
    }
}
