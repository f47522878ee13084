package piecewright.text;

import java.util.Locale;
import java.util.Objects;

/** How one person writes and reads figures: units, colour scale, and the locale that decides the decimal sign. */
public record DisplayUnits(UnitSystem system, ColourUnit colour, Locale locale) {
    public DisplayUnits {
        Objects.requireNonNull(system);
        Objects.requireNonNull(colour);
        Objects.requireNonNull(locale);
    }

    /** kg, °C and EBC, with a decimal point and English names of days. */
    public static DisplayUnits metric() {
        return new DisplayUnits(UnitSystem.METRIC, ColourUnit.EBC, Locale.ENGLISH);
    }

    /** lb and oz, °F and SRM, with a decimal point and English names of days. */
    public static DisplayUnits us() {
        return new DisplayUnits(UnitSystem.US, ColourUnit.SRM, Locale.ENGLISH);
    }
}
