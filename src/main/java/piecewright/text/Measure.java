package piecewright.text;

import static piecewright.text.UnitSpelling.unit;

import java.util.List;
import piecewright.quantity.Units;

/** The kinds of quantity that can be typed, with every spelling of their units. */
enum Measure {
    MASS(
            "weight",
            "5.2 kg, 850 g or 6 lb 15 oz",
            List.of(
                    unit("metric", 2, kg -> kg, "kg", "kilo", "kilos", "kilogram", "kilograms"),
                    unit("metric", 1, g -> g / 1000, "g", "gram", "grams"),
                    unit("pound", 2, lb -> lb * Units.KG_PER_POUND, "lb", "lbs", "pound", "pounds"),
                    unit("pound", 1, oz -> oz * Units.KG_PER_OUNCE, "oz", "ounce", "ounces"))),
    TEMPERATURE(
            "temperature",
            "18 °C or 64 F",
            List.of(
                    unit("", 1, c -> c, "°c", "c", "deg c", "degc", "celsius"),
                    unit("", 1, Units::celsiusOfFahrenheit, "°f", "f", "deg f", "degf", "fahrenheit"))),
    COLOUR(
            "colour",
            "3.5 EBC, 9 SRM or 3 °L",
            List.of(
                    unit("", 1, ColourUnit.EBC::ebcOf, "ebc"),
                    unit("", 1, ColourUnit.SRM::ebcOf, "srm"),
                    unit("", 1, ColourUnit.LOVIBOND::ebcOf, "°l", "l", "deg l", "lovibond", "°lovibond"))),
    SHARE("percentage", "12.5 %", List.of(unit("", 1, p -> p / 100, "%", "percent", "per cent", "pct"))),
    VOLUME(
            "volume",
            "12 L, 500 mL or 3 gal",
            List.of(
                    unit("", 1, l -> l, "l", "litre", "litres", "liter", "liters"),
                    unit("", 1, ml -> ml / 1000, "ml", "millilitre", "millilitres", "milliliter", "milliliters"),
                    unit("", 1, gal -> gal * Units.L_PER_US_GALLON, "gal", "gallon", "gallons"),
                    unit("", 1, qt -> qt * Units.L_PER_US_GALLON / 4, "qt", "quart", "quarts"),
                    unit("", 1, flOz -> flOz * Units.L_PER_US_GALLON / 128, "fl oz", "floz", "fl. oz"))),
    AREA(
            "area",
            "0.36 m², 3600 cm2 or 4 sq ft",
            List.of(
                    unit("", 1, m2 -> m2, "m²", "m2", "sq m"),
                    unit("", 1, cm2 -> cm2 / 1e4, "cm²", "cm2", "sq cm"),
                    unit("", 1, ft2 -> ft2 * 0.3048 * 0.3048, "ft²", "ft2", "sq ft"),
                    unit("", 1, in2 -> in2 * 0.0254 * 0.0254, "in²", "in2", "sq in"))),
    LENGTH(
            "length",
            "5 cm, 50 mm or 2 in",
            List.of(
                    unit("", 1, cm -> cm, "cm", "centimetre", "centimetres", "centimeter", "centimeters"),
                    unit("", 1, mm -> mm / 10, "mm"),
                    unit("", 1, m -> m * 100, "m", "metre", "metres", "meter", "meters"),
                    unit("foot", 2, ft -> ft * 30.48, "ft", "foot", "feet"),
                    unit("foot", 1, in -> in * 2.54, "in", "inch", "inches", "\""))),
    TIME(
            "length of time",
            "8 h, 90 min, 7 h 30 min or 2 d",
            List.of(
                    unit("time", 3, d -> d * 24, "d", "day", "days"),
                    unit("time", 2, h -> h, "h", "hr", "hrs", "hour", "hours"),
                    unit("time", 1, min -> min / 60, "min", "mins", "minute", "minutes")));

    private final String noun;
    private final String example;
    private final List<UnitSpelling> units;

    Measure(String noun, String example, List<UnitSpelling> units) {
        this.noun = noun;
        this.example = example;
        this.units = units;
    }

    String noun() {
        return noun;
    }

    String example() {
        return example;
    }

    List<UnitSpelling> units() {
        return units;
    }
}
