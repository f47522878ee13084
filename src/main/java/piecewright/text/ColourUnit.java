package piecewright.text;

import java.util.Locale;
import piecewright.quantity.Units;

/** The scales malt colour is told in. They are never equal: 10 °L is 12.8 SRM is 25 EBC. */
public enum ColourUnit {
    EBC("EBC"),
    SRM("SRM"),
    LOVIBOND("°L");

    private final String symbol;

    ColourUnit(String symbol) {
        this.symbol = symbol;
    }

    public String symbol() {
        return symbol;
    }

    /** The word used on the command line and in files: lower case. */
    public String key() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** EBC of a figure on this scale, 0 or more. */
    public double ebcOf(double figure) {
        return switch (this) {
            case EBC -> figure;
            case SRM -> Units.ebcOfSrm(figure);
            case LOVIBOND -> Units.ebcOfSrm(Units.srmOfLovibond(figure));
        };
    }

    /** The figure on this scale of a colour in EBC, 0 or more. */
    public double ofEbc(double colourEbc) {
        return switch (this) {
            case EBC -> colourEbc;
            case SRM -> Units.srmOfEbc(colourEbc);
            case LOVIBOND -> Units.lovibondOfSrm(Units.srmOfEbc(colourEbc));
        };
    }
}
