package piecewright.text;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * Reads quantities as people type them: "6 lb 15 oz", "64 F", "3,5 EBC", "8 h". Digits of any script count; "," and "."
 * are both decimal signs, but a number such as "1,234" that could also mean a thousand is refused where the locale's own
 * decimal sign is the other one. Nothing depends on the default locale.
 */
public final class QuantityParser {
    private static final double LARGEST = 1e6;
    private static final double ABSOLUTE_ZERO_C = -273.15;
    private static final int LONGEST = 100;

    private final DecimalReader decimals;
    private final Optional<DisplayUnits> bare;

    private QuantityParser(Locale locale, Optional<DisplayUnits> bare) {
        this.decimals = new DecimalReader(Objects.requireNonNull(locale));
        this.bare = bare;
    }

    /** Refuses a number without a unit. */
    public static QuantityParser needingUnits(Locale locale) {
        return new QuantityParser(locale, Optional.empty());
    }

    /** Takes a number without a unit as one in the person's own units: kg or lb, °C or °F, %, L or gal, cm or in, h. */
    public static QuantityParser forPerson(DisplayUnits units) {
        return new QuantityParser(units.locale(), Optional.of(units));
    }

    /** A weight, kg, 0 or more. */
    public double massKg(String typed) throws UnreadableException {
        return read(Measure.MASS, typed);
    }

    /** A temperature, °C; may be below zero. */
    public double temperatureC(String typed) throws UnreadableException {
        return read(Measure.TEMPERATURE, typed);
    }

    /** A colour, EBC, 0 or more. */
    public double colourEbc(String typed) throws UnreadableException {
        return read(Measure.COLOUR, typed);
    }

    /** A percentage, as a share of one, 0 or more; "95 %" is 0.95. */
    public double shareFraction(String typed) throws UnreadableException {
        return read(Measure.SHARE, typed);
    }

    /** A volume, litres, 0 or more; gallons are US gallons. */
    public double volumeL(String typed) throws UnreadableException {
        return read(Measure.VOLUME, typed);
    }

    /** An area, m², 0 or more. */
    public double areaM2(String typed) throws UnreadableException {
        return read(Measure.AREA, typed);
    }

    /** A length, cm, 0 or more. */
    public double lengthCm(String typed) throws UnreadableException {
        return read(Measure.LENGTH, typed);
    }

    /** A length of time, hours, 0 or more. */
    public double timeHours(String typed) throws UnreadableException {
        return read(Measure.TIME, typed);
    }

    private double read(Measure measure, String typed) throws UnreadableException {
        String text = DecimalReader.plain(typed);
        if (text.isEmpty()) throw refused(measure, typed, "nothing was typed");
        if (text.length() > LONGEST) throw refused(measure, typed, "it is too long");
        boolean negative = text.startsWith("-");
        if (negative && measure != Measure.TEMPERATURE) throw refused(measure, typed, "it must not be below zero");
        QuantityScan scan = new QuantityScan(measure, text, negative ? 1 : 0);
        double inside;
        try {
            inside = scan.read(decimals, bare, negative ? -1 : 1);
        } catch (UnreadableException clause) {
            throw refused(measure, typed, String.valueOf(clause.getMessage()));
        }
        if (!(Math.abs(inside) <= LARGEST)) throw refused(measure, typed, "it is too large");
        if (measure == Measure.TEMPERATURE && inside < ABSOLUTE_ZERO_C) {
            throw refused(measure, typed, "it is below absolute zero");
        }
        return inside;
    }

    private static UnreadableException refused(Measure measure, String typed, String clause) {
        return new UnreadableException(
                "\"" + Quoted.shortly(typed) + "\" is not " + (measure == Measure.AREA ? "an " : "a ") + measure.noun()
                        + ": " + clause + "; write it like " + measure.example());
    }
}
